import type { ReactNode } from 'react';
import type { Basket } from '../model/basket.ts';
import { formatLength } from '../plan/units.ts';
import { litres, usDryQuarts } from './capacity.ts';
import './charts.css';

/** The settled basket in a few numbers. */
export function SummaryCard({ basket }: { readonly basket: Pick<Basket, 'plan' | 'summary'> }) {
  const { summary, plan } = basket;
  const { unit } = plan.display;
  const length = (mm: number) => formatLength(mm, unit);
  const across = (one: number, other: number) =>
    `${formatLength(one, unit, { withUnit: false })} × ${length(other)}`;
  const { belly, rim } = summary;
  return (
    <section className="summary" aria-labelledby="summary-title">
      <h3 className="summary-title" id="summary-title">
        Summary
      </h3>
      <dl className="summary-list">
        <Fact name="Height">{length(summary.height)}</Fact>
        <Fact name="Belly" aside={`at row ${belly.row}`}>
          {length(belly.tapeGirth)}
        </Fact>
        <Fact name="Rim" aside={across(rim.length, rim.width)}>
          {length(rim.tapeGirth)}
        </Fact>
        <Fact name="Capacity" aside={`${litres(summary.capacity)} litres`}>
          {usDryQuarts(summary.capacity)} dry qt
        </Fact>
        <Fact name="Stands on" aside={`${length(summary.footHeight)} high`}>
          {summary.feet === 1 ? '1 foot' : `${summary.feet} feet`}
        </Fact>
        <Fact name="Clear under the middle">{length(summary.centreClearance)}</Fact>
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

interface FactProps {
  readonly name: string;
  readonly aside?: string;
  readonly children: ReactNode;
}

function Fact({ name, aside, children }: FactProps) {
  return (
    <div className="summary-fact">
      <dt>{name}</dt>
      <dd>
        {children}
        {aside && <small>{aside}</small>}
      </dd>
    </div>
  );
}
