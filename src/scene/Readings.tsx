import { Html, Line } from '@react-three/drei';
import { useMemo } from 'react';
import { tapeRing } from '../mesh/tapeRing.ts';
import type { Basket } from '../model/basket.ts';
import type { Live } from './live.ts';
import { useLive } from './live.ts';
import type { StageShape } from './stageShape.ts';
import { centimetres } from './toThree.ts';

/** What is written beside the lines; null where there is nothing to say. */
export interface ReadingWords {
  readonly height: string;
  readonly length: string;
  readonly width: string;
  /** At the table's line: what is clear under the basket. */
  readonly table: string;
  /** Whether the basket stands on feet high enough to be shown. */
  readonly hasFeet: boolean;
  /** At the row pointed at. */
  readonly tape: string | null;
}

interface Props {
  readonly basket: Basket;
  readonly row: number | null;
  readonly words: ReadingWords;
  readonly ink: string;
  readonly accent: string;
}

interface LiveProps extends Omit<Props, 'basket' | 'words'> {
  readonly shapes: Live<StageShape | null>;
  readonly wordsOf: (basket: Basket, row: number | null) => ReadingWords;
}

/** The same of a basket that changes. */
export function LiveReadings({ shapes, wordsOf, ...rest }: LiveProps) {
  const shape = useLive(shapes);
  if (!shape) return null;
  const { basket } = shape;
  return <Readings {...rest} basket={basket} words={wordsOf(basket, rest.row)} />;
}

type Place = readonly [number, number, number];

/** Distance of a dimension line from the basket, mm. */
const away = 16;

/** The table's line, height, length and width, clearances, and the tape round the row pointed at. */
function Readings({ basket, row, words, ink, accent }: Props) {
  const { rows, summary } = basket;
  const x = Math.max(...rows.map(({ length }) => length)) / 2;
  const y = Math.max(...rows.map(({ width }) => width)) / 2;
  const edge = summary.baseWidth / 2;
  const table: readonly [Place, Place] = [
    [-x - 2 * away, -y - away / 2, 0],
    [x + 2 * away, -y - away / 2, 0],
  ];
  const ring = useMemo(() => (row === null ? null : ringOf(basket, row)), [basket, row]);
  return (
    <>
      <Dimension
        from={[-x - away, -y, 0]}
        to={[-x - away, -y, summary.height]}
        text={words.height}
        ink={ink}
      />
      <Dimension from={[-x, -y - away, 0]} to={[x, -y - away, 0]} text={words.length} ink={ink} />
      <Dimension from={[x + away, -y, 0]} to={[x + away, y, 0]} text={words.width} ink={ink} />
      <Line points={table.map(upright)} color={ink} lineWidth={2.5} />
      <Label at={upright(table[1])} text={words.table} side="right" />
      {words.hasFeet && (
        <Dimension from={[0, -edge, 0]} to={[0, -edge, summary.footHeight]} ink={ink} />
      )}
      {ring && words.tape && (
        <>
          <Line points={ring} color={accent} lineWidth={3} depthTest />
          <Label at={tapePlace(ring)} text={words.tape} />
        </>
      )}
    </>
  );
}

interface DimensionProps {
  readonly from: Place;
  readonly to: Place;
  readonly text?: string;
  readonly ink: string;
}

/** A line with a short stroke across each end, its length at its middle where it is given. mm, z up. */
function Dimension({ from, to, text, ink }: DimensionProps) {
  const isUpright = from[2] !== to[2];
  const isAlongX = from[0] !== to[0];
  const tick = 4;
  const across = (at: Place): [Place, Place] =>
    isUpright || !isAlongX
      ? [move(at, -tick, 0), move(at, tick, 0)]
      : [move(at, 0, -tick), move(at, 0, tick)];
  const middle: Place = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2];
  const segments = [from, to, ...across(from), ...across(to)].map(upright);
  return (
    <>
      <Line points={segments} segments color={ink} lineWidth={1.5} />
      {text && <Label at={upright(middle)} text={text} />}
    </>
  );
}

interface LabelProps {
  readonly at: Place;
  readonly text: string;
  /** Where the words stand: over the place, or to its right. */
  readonly side?: 'over' | 'right';
}

/** Words at a place of the scene. */
function Label({ at, text, side = 'over' }: LabelProps) {
  return (
    <Html position={[...at]} zIndexRange={[1, 0]}>
      <div className="stage-reading" data-side={side}>
        {text}
      </div>
    </Html>
  );
}

function ringOf(basket: Basket, row: number): [number, number, number][] {
  const points = tapeRing(basket, row);
  const ring: [number, number, number][] = [];
  for (let at = 0; at + 2 < points.length; at += 3) {
    ring.push(upright([points[at] ?? 0, points[at + 1] ?? 0, points[at + 2] ?? 0]));
  }
  const [first] = ring;
  return first ? [...ring, first] : ring;
}

/**
 * Where the tape's words stand: behind and to the right, clear of the lines of height, length and width.
 * Scene units, y up.
 */
function tapePlace(ring: readonly Place[]): Place {
  const share = ([x, , z]: Place) => 0.8 * x - z;
  return ring.reduce<Place>((most, at) => (share(at) > share(most) ? at : most), [0, 0, 0]);
}

function move([x, y, z]: Place, alongX: number, alongY: number): Place {
  return [x + alongX, y + alongY, z];
}

/** From millimetres, z up, to scene units, y up. */
function upright([x, y, z]: Place): [number, number, number] {
  return [centimetres * x, centimetres * z, -centimetres * y];
}
