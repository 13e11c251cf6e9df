import type { Margin } from '../../tow/index.ts';
import { type Fact, factsOf, isNotComputed, valueOf } from '../facts/fact.ts';
import { dashedName } from '../facts/names.ts';
import type { Figures } from '../types.ts';

const tow = factsOf('tow');
const ON_BALL = tow('customer', 'mass', 'on-ball', 'Mass on the tow ball', 'ballLoad');
const SHARE = tow('customer', 'share', 'ball-share', 'Share on the tow ball', 'ballLoad');
const POST = tow('workshop', 'length', 'winch-post', 'Winch post, aft of the ball', 'ballLoad');
const USUAL = tow(
  'workshop',
  'length',
  'winch-post-usual',
  'Winch post for the usual share on the ball',
  'ballLoad',
);
const BRAKES = tow(
  'customer',
  'text',
  'brakes',
  'Braked wheels that the rules ask for',
  'roadRules',
);
const LENGTH = tow('customer', 'length', 'length', 'Overall length when towed', 'roadRules');
const COUPLING = tow('office', 'couplingForce', 'coupling', 'D-value of the coupling', 'coupling');
const MASS_LEFT = tow('customer', 'mass', '*.left', 'Left of a limit', 'roadRules');
const LENGTH_LEFT = tow('customer', 'length', '*.left', 'Left of a limit', 'roadRules');
const SHARE_LEFT = tow('customer', 'share', '*.left', 'Left of a limit', 'roadRules');

export interface TowFacts {
  readonly onBall?: Fact<'customer'>;
  readonly length?: Fact<'customer'>;
  readonly others: {
    readonly onRoof: readonly Fact[];
    readonly share?: Fact<'customer'>;
    readonly post?: Fact<'workshop'>;
    readonly more?: readonly Fact[];
  };
}

/** Ball load, winch post, brakes, and what is left of every limit on the road. */
export function towFacts({ tow: { trailer, roof = [] } }: Pick<Figures, 'tow'>): TowFacts {
  const onRoof = roof.map((one) => leftOf(one, `roof.${dashedName(one.name)}`));
  if (!trailer) return { others: { onRoof } };
  const { ball, winchPost, brakes, gear, vehicle, length, lengths, width, coupling } = trailer;
  const onBall = ON_BALL(valueOf(ball, (known) => known.onBall));
  const margins = [
    gear,
    vehicle,
    lengths,
    valueOf(brakes, (known) => known.margins),
    valueOf(winchPost, (known) => known.margins),
  ];
  return {
    onBall,
    length: LENGTH(length),
    others: {
      onRoof,
      share: SHARE(
        valueOf(ball, ({ share }) => share),
        { from: [onBall.key] },
      ),
      post: POST(valueOf(winchPost, ({ at }) => at)),
      more: [
        USUAL(valueOf(winchPost, ({ usual }) => usual)),
        BRAKES(
          valueOf(brakes, ({ braked }) => braked),
          isNotComputed(brakes) ? {} : { source: brakes.source },
        ),
        isNotComputed(width) ? LENGTH_LEFT(width, { of: 'width' }) : leftOf(width, 'width'),
        ...margins.flatMap((known) =>
          isNotComputed(known) ? [] : known.map((one) => leftOf(one, keyOf(one))),
        ),
        COUPLING(valueOf(coupling, (kilonewtons) => kilonewtons * 1000)),
      ],
    },
  };
}

/** A name in a key stays when the words for it change. */
const KEPT: ReadonlyMap<string, string> = new Map([
  ['overall length when towed', 'length-on-the-road'],
]);

const keyOf = ({ name }: Margin): string => KEPT.get(name) ?? dashedName(name);

function leftOf({ left, unit }: Margin, of: string): Fact<'customer'> {
  if (unit === 'kg') return MASS_LEFT(left, { of });
  return unit === 'm' ? LENGTH_LEFT(left, { of }) : SHARE_LEFT(left, { of });
}
