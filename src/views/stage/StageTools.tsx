import { stageWords } from '#words/stage.ts';
import { tintKinds } from '../../mesh/rowTints.ts';
import type { Basket } from '../../model/basket.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { SaveMenu } from './SaveMenu.tsx';
import type { StageShow } from './stageShow.ts';
import type { TintScale } from './tintScale.ts';

interface Props {
  readonly basket: Basket | null;
  readonly show: StageShow;
  readonly onShow: (show: StageShow) => void;
  /** False where only outlines can be shown. */
  readonly canDraw: boolean;
  readonly isBuilding: boolean;
  readonly onBuild: () => void;
  readonly onPicture: TakePicture | null;
  readonly scale: TintScale | null;
}

/** What else the stage can show, and what the basket can be saved as. */
export function StageTools(props: Props) {
  const { basket, show, onShow, canDraw, isBuilding, onBuild, onPicture, scale } = props;
  const isPicture = canDraw && !show.outline;
  return (
    <fieldset className="stage-tools">
      <legend className="unseen">{stageWords.show}</legend>
      <button type="button" aria-pressed={isBuilding} onClick={onBuild}>
        {stageWords.rowByRow}
      </button>
      {canDraw && (
        <button
          type="button"
          aria-pressed={show.outline}
          onClick={() => onShow({ ...show, outline: !show.outline })}
        >
          {stageWords.outline}
        </button>
      )}
      {isPicture && (
        <button
          type="button"
          aria-pressed={show.sizes}
          onClick={() => onShow({ ...show, sizes: !show.sizes })}
        >
          {stageWords.sizes}
        </button>
      )}
      {isPicture && (
        <label>
          <span className="unseen">{stageWords.colourBy}</span>
          <select
            value={show.tint ?? ''}
            onChange={({ target }) =>
              onShow({ ...show, tint: tintKinds.find((kind) => kind === target.value) ?? null })
            }
          >
            <option value="">{stageWords.ownColours}</option>
            {tintKinds.map((kind) => (
              <option key={kind} value={kind}>
                {stageWords.tintNames[kind]}
              </option>
            ))}
          </select>
        </label>
      )}
      {basket && <SaveMenu basket={basket} onPicture={onPicture} scale={scale} />}
    </fieldset>
  );
}
