import type { ReactNode } from 'react';
import { memo } from 'react';
import { summaryWords as words } from '#words/summary.ts';
import type { TradeWord } from '../form/tradeWords.ts';
import { WordHelp } from '../form/WordHelp.tsx';
import type { Basket } from '../model/basket.ts';
import { capacityText } from '../plan/capacity.ts';
import { formatLength } from '../plan/units.ts';
import { areaText, strandText, weightText } from './large.ts';
import './charts.css';

interface Props {
  readonly basket: Pick<Basket, 'plan' | 'summary'>;
}

/** The settled basket in a few numbers. */
export const SummaryCard = memo(function SummaryCard({ basket }: Props) {
  const { summary, plan } = basket;
  const { unit } = plan.display;
  const length = (mm: number) => formatLength(mm, unit);
  const across = (one: number, other: number) =>
    `${formatLength(one, unit, { withUnit: false })} × ${length(other)}`;
  const { belly, rim } = summary;
  const hasFeet = summary.feet > 1 && summary.footHeight > least;
  return (
    <section className="summary" aria-labelledby="summary-title">
      <h3 className="summary-title" id="summary-title">
        {words.title}
      </h3>
      <dl className="summary-list">
        <Fact name={words.height.name} aside={words.height.withRim(length(summary.heightWithRim))}>
          {length(summary.height)}
        </Fact>
        <Fact name={words.belly.name} word="belly" aside={words.belly.atRow(belly.row)}>
          {length(belly.tapeGirth)}
        </Fact>
        <Fact name={words.rim} word="rim" aside={across(rim.length, rim.width)}>
          {length(rim.tapeGirth)}
        </Fact>
        <Fact
          name={words.capacity.name}
          aside={capacityText(summary.capacity, unit === 'in' ? 'cm' : 'in')}
        >
          {capacityText(summary.capacity, unit)}
        </Fact>
        <Fact
          name={words.standsOn.name}
          {...(hasFeet && { aside: words.standsOn.feetHigh(length(summary.footHeight)) })}
        >
          {hasFeet ? words.standsOn.feet(summary.feet) : standing(summary.feet)}
        </Fact>
        <Fact name={words.clear}>{length(summary.centreClearance)}</Fact>
        <Fact name={words.tips.name} aside={words.tips.aside}>
          {Math.round(summary.tipAngle)}°
        </Fact>
        <Fact
          name={words.weaver.name}
          aside={words.weaver.ofWall(areaText(summary.wallArea, unit))}
        >
          {strandText(summary.weaverLength, unit)}
        </Fact>
        <Fact name={words.weight.name} aside={words.weight.aside}>
          {weightText(summary.weight, unit)}
        </Fact>
        <Fact name={words.base.name} aside={words.base.girth(length(summary.baseGirth))}>
          {across(summary.baseLength, summary.baseWidth)}
        </Fact>
        <Fact name={words.counts.name}>{words.counts.text(summary.ends, summary.rows)}</Fact>
      </dl>
    </section>
  );
});

/** Feet lower than this are none, mm. */
const least = 0.5;

function standing(places: number): string {
  return places > 1 ? words.standsOn.places(places) : words.standsOn.edge;
}

interface FactProps {
  readonly name: string;
  readonly word?: TradeWord;
  readonly aside?: string;
  readonly children: ReactNode;
}

function Fact({ name, word, aside, children }: FactProps) {
  return (
    <div className="summary-fact">
      <dt>
        {name} {word && <WordHelp word={word} />}
      </dt>
      <dd>
        {children}
        {aside && <small>{aside}</small>}
      </dd>
    </div>
  );
}
