import { type Finding, finding } from '../findings/index.ts';
import { type Order, type SourcedOrder, type Status, STATUSES } from '../schema/index.ts';
import type { IsoDate } from '../units/index.ts';

type DateName = keyof Order['dates'];

/** The days of an order's life in the sequence that they must have. */
const SEQUENCE: readonly DateName[] = [
  'enquiry',
  'quoted',
  'accepted',
  'started',
  'ready',
  'handedOver',
];

/** Which dates a status calls for. */
const NEEDED: Readonly<Record<Status, readonly DateName[]>> = {
  enquiry: [],
  quoted: ['quoted'],
  accepted: ['quoted', 'accepted', 'promised'],
  building: ['quoted', 'accepted', 'promised', 'started'],
  ready: ['quoted', 'accepted', 'promised', 'started', 'ready'],
  'handed-over': ['quoted', 'accepted', 'promised', 'started', 'ready', 'handedOver'],
  closed: [],
};

/** Findings within one order that need no catalogue: its dates, and what its status calls for. */
export function checkOrder(order: SourcedOrder): readonly Finding[] {
  return [...checkSequence(order), ...checkRecordDates(order), ...checkStatus(order)];
}

function checkSequence(order: SourcedOrder): readonly Finding[] {
  const { dates } = order.value;
  const given = SEQUENCE.flatMap((name) =>
    dates[name] === undefined ? [] : [{ name, day: dates[name] }],
  );
  const findings = given.slice(1).flatMap(({ name, day }, index) => {
    const before = given[index];
    if (!before || day >= before.day) return [];
    return [outOfOrder(order, ['dates', name], `${name} ${day}`, `${before.name}, ${before.day}`)];
  });
  if (dates.promised !== undefined && dates.promised < dates.enquiry) {
    findings.push(
      outOfOrder(
        order,
        ['dates', 'promised'],
        `promised ${dates.promised}`,
        `enquiry, ${dates.enquiry}`,
      ),
    );
  }
  return findings;
}

function checkRecordDates(order: SourcedOrder): readonly Finding[] {
  const { dates, record } = order.value;
  const start = dates.started;
  if (!record || start === undefined) return [];
  const early = (
    list: 'masses' | 'trials',
    entries: readonly { readonly date: IsoDate }[],
  ): readonly Finding[] =>
    entries.flatMap(({ date }, index) =>
      date >= start
        ? []
        : [
            outOfOrder(
              order,
              ['record', list, index, 'date'],
              date,
              `the start of the build, ${start}`,
            ),
          ],
    );
  return [...early('masses', record.masses), ...early('trials', record.trials)];
}

function outOfOrder(
  order: SourcedOrder,
  path: readonly (string | number)[],
  received: string,
  notBefore: string,
): Finding {
  return finding('DATES_OUT_OF_ORDER', order.place(path), {
    received,
    expected: `not before ${notBefore}`,
  });
}

function checkStatus(order: SourcedOrder): readonly Finding[] {
  const { status, dates, record } = order.value;
  const missing = NEEDED[status]
    .filter((name) => dates[name] === undefined)
    .map((name) => `dates: ${name}:`);
  const reached = STATUSES.indexOf(status);
  if (status !== 'closed' && reached >= STATUSES.indexOf('ready')) {
    if (!record?.trials.length) missing.push('record: trials:');
    if (!record?.masses.length) missing.push('record: masses:');
  }
  if (status === 'handed-over' && record?.hullNumber === undefined)
    missing.push('record: hullNumber:');
  return missing.map((field) =>
    finding('STATUS_NEEDS', order.place(['status']), {
      received: status,
      expected: `the order also has ${field}`,
    }),
  );
}
