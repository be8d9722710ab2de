import { shelfWords } from '#words/shelf.ts';
import { lookAt } from '../../keep/openKept.ts';
import { sketch } from '../../mesh/sketch.ts';
import type { Demo } from '../../plan/demo/demos.ts';
import { demos } from '../../plan/demo/demos.ts';
import { ThumbnailPicture } from './ThumbnailPicture.tsx';

const pictures = new Map(demos.map(({ id, plan }) => [id, sketch(plan)]));

/** The baskets of the orchard class. One that is opened comes on the shelf with its first change. */
export function DemoShelf() {
  const open = ({ plan }: Demo) => {
    lookAt(plan);
    globalThis.location.hash = '#plan';
  };
  return (
    <section aria-labelledby="class-baskets">
      <h2 id="class-baskets">{shelfWords.classBaskets}</h2>
      <ul className="shelf-cards">
        {demos.map((demo) => (
          <li key={demo.id} className="shelf-card">
            <button
              type="button"
              className="shelf-open"
              aria-label={shelfWords.startFrom(demo.title)}
              onClick={() => open(demo)}
            >
              <ThumbnailPicture thumbnail={pictures.get(demo.id) ?? null} />
            </button>
            <p className="shelf-name">{demo.title}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}
