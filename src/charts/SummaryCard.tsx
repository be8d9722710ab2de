import type { ReactNode } from 'react';
import type { TradeWord } from '../form/tradeWords.ts';
import { WordHelp } from '../form/WordHelp.tsx';
import type { Basket } from '../model/basket.ts';
import { formatLength } from '../plan/units.ts';
import { litres, usDryMeasure } from './capacity.ts';
import { areaText, strandText, weightText } from './large.ts';
import './charts.css';

/** The settled basket in a few numbers. */
export function SummaryCard({ basket }: { readonly basket: Pick<Basket, 'plan' | 'summary'> }) {
  const { summary, plan } = basket;
  const { unit } = plan.display;
  const length = (mm: number) => formatLength(mm, unit);
  const across = (one: number, other: number) =>
    `${formatLength(one, unit, { withUnit: false })} × ${length(other)}`;
  const { belly, rim } = summary;
  const inLitres = `${litres(summary.capacity)} litres`;
  const inQuarts = usDryMeasure(summary.capacity);
  const hasFeet = summary.feet > 1 && summary.footHeight > least;
  return (
    <section className="summary" aria-labelledby="summary-title">
      <h3 className="summary-title" id="summary-title">
        Summary
      </h3>
      <dl className="summary-list">
        <Fact name="Height">{length(summary.height)}</Fact>
        <Fact name="Belly" word="belly" aside={`at row ${belly.row}`}>
          {length(belly.tapeGirth)}
        </Fact>
        <Fact name="Rim" word="rim" aside={across(rim.length, rim.width)}>
          {length(rim.tapeGirth)}
        </Fact>
        <Fact name="Capacity" aside={unit === 'in' ? inLitres : inQuarts}>
          {unit === 'in' ? inQuarts : inLitres}
        </Fact>
        <Fact name="Stands on" {...(hasFeet && { aside: `${length(summary.footHeight)} high` })}>
          {hasFeet ? countedFeet(summary.feet) : standing(summary.feet)}
        </Fact>
        <Fact name="Clear under the middle">{length(summary.centreClearance)}</Fact>
        <Fact name="Tips at" aside="tilted, empty">
          {Math.round(summary.tipAngle)}°
        </Fact>
        <Fact name="Weaver" aside={`${areaText(summary.wallArea, unit)} of wall`}>
          {strandText(summary.weaverLength, unit)}
        </Fact>
        <Fact name="Weight" aside="rim and handle with it">
          {weightText(summary.weight, unit)}
        </Fact>
        <Fact name="Base" aside={`girth ${length(summary.baseGirth)}`}>
          {across(summary.baseLength, summary.baseWidth)}
        </Fact>
        <Fact name="Ends and rows">
          {summary.ends} ends, {summary.rows} rows
        </Fact>
      </dl>
    </section>
  );
}

/** Feet lower than this are none, mm. */
const least = 0.5;

/** In words up to four, so that nobody reads a length in feet. */
function countedFeet(feet: number): string {
  return `${['no', 'one', 'two', 'three', 'four'][feet] ?? feet} feet`;
}

function standing(places: number): string {
  return places > 1 ? `${places} places` : 'its whole edge';
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
