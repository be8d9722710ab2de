import { memo } from 'react';
import { rowTableWords } from '#words/rowTable.ts';
import { colourName } from '../form/colourName.ts';
import { LengthField } from '../form/LengthField.tsx';
import { strandCss } from '../plan/dyes.ts';
import { withLengths } from '../plan/lengthText.ts';
import { limits } from '../plan/limits.ts';
import { wholeDegrees } from '../plan/measureText.ts';
import type { Unit } from '../plan/schema.ts';
import { formatChange, formatLength, shownChange } from '../plan/units.ts';
import { gapChange } from './gapChange.ts';
import type { RowEdits } from './rowEdits.ts';
import { SeverityMark, severityBefore } from './SeverityMark.tsx';
import type { TableRow } from './tableRows.ts';

export interface RowLineProps {
  readonly line: TableRow;
  readonly unit: Unit;
  readonly isPointed: boolean;
  /** True for the one row that the keyboard is at: its planned girth can be typed. */
  readonly isActive: boolean;
  readonly edits: RowEdits;
}

/** One row of the chart. */
export const RowLine = memo(
  function RowLine({ line, unit, isPointed, isActive, edits }: RowLineProps) {
    const { row, read, findings } = line;
    const plain = (mm: number | undefined) =>
      formatLength(mm ?? Number.NaN, unit, { withUnit: false });
    return (
      <tr
        data-row={row}
        tabIndex={isActive ? 0 : -1}
        className={isPointed ? 'row-pointed' : undefined}
        aria-current={isPointed ? 'true' : undefined}
      >
        <th scope="row">
          {findings.map((finding) => (
            <span
              key={`${finding.kind}-${finding.text}`}
              className="row-finding"
              title={withLengths(finding.text, unit)}
            >
              <SeverityMark severity={finding.severity} />
              <span className="field-unseen">{severityBefore(finding.severity)}</span>
            </span>
          ))}
          {row}
        </th>
        <td className="row-tape">{plain(read?.tapeGirth)}</td>
        <td>{formatChange(changeOf(read, unit), unit, { withUnit: false })}</td>
        <td>{gapChange(read?.changePerGap ?? Number.NaN, unit)}</td>
        <td>{read ? `${plain(read.length)} × ${plain(read.width)}` : '–'}</td>
        <td>{plain(read?.heightSide)}</td>
        <td>{wholeDegrees(read?.lean ?? Number.NaN)}</td>
        <td className="row-planned">
          {isActive ? <PlannedGirth line={line} unit={unit} edits={edits} /> : plain(line.planned)}
          {line.isByHand && !isActive && (
            <span className="row-by-hand">{rowTableWords.byHand}</span>
          )}
        </td>
        <td className="row-band">
          <span className="row-swatch" style={{ background: strandCss(line.colour) }} />
          {colourName(line.colour)}
        </td>
      </tr>
    );
  },
  (before, after) => {
    const { line: old, ...oldRest } = before;
    const { line: now, ...nowRest } = after;
    return isSame(oldRest, nowRest) && isSame(old, now);
  },
);

interface PlannedGirthProps {
  readonly line: TableRow;
  readonly unit: Unit;
  readonly edits: RowEdits;
}

function PlannedGirth({ line: { row, planned, isByHand }, unit, edits }: PlannedGirthProps) {
  return (
    <span className="row-edit">
      <LengthField
        label={rowTableWords.plannedOf(row)}
        hideLabel
        mm={planned}
        present={() => edits.byHand(row) ?? planned}
        unit={unit}
        least={limits.girth.least}
        most={limits.girth.most}
        onCommit={(girth, stepped) => {
          edits.set(row, girth, stepped ? `row-${row}-keys` : undefined);
          return null;
        }}
      />
      {isByHand && (
        <button
          type="button"
          className="row-clear"
          aria-label={rowTableWords.clearRow(row)}
          onClick={() => edits.clear(row)}
        >
          {rowTableWords.clear}
        </button>
      )}
    </span>
  );
}

/** Change of the tape girth as both rows are shown, mm. */
function changeOf(read: TableRow['read'], unit: Unit): number {
  return read ? shownChange(read.tapeGirth - read.change, read.tapeGirth, unit) : Number.NaN;
}

function isSame<T extends object>(one: T, other: T): boolean {
  return (Object.keys(one) as (keyof T)[]).every((key) => Object.is(one[key], other[key]));
}
