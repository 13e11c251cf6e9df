import { stringify } from 'yaml';
import type { Hull } from '../schema/index.ts';
import type { IsoDate } from '../units/index.ts';

interface Beginning {
  readonly number: string;
  readonly hull: Hull;
  readonly today: IsoDate;
  readonly customer?: string;
}

/** The text of a new order: what is known filled in, what nobody has said marked with question marks or left out. */
export function orderTemplate({ number, hull, today, customer }: Beginning): string {
  const quoted = (text: string): string =>
    stringify(text, { defaultStringType: 'QUOTE_DOUBLE', lineWidth: 0 }).trimEnd();
  return `# yaml-language-server: $schema=../catalogue/schema/order.schema.json
number: ${quoted(number)}
status: enquiry
dates:
  enquiry: ${today}
  # quoted: ${today}     # the day whose prices the quote has
customer:
  name: ${quoted(customer ?? '??? who it is for')}
  # contact: the person to ask for
  # address: [first line, second line]
  # phone: "0000 000 000"
  # email: name@example.org
boat:
  use: "??? what the boat is for, in one sentence that the quote prints"
  # people: how many it is to carry; ask
  # water: fresh, sea or both; ask
hull: ${hull.id}
options: []
# options:
#   - an-option
#   - option: another-option
#     quantity: 2
#     note: for the workshop
# outboard:
#   model: an-outboard
#   shaft: ${hull.shaft}
# fuel: 25 L
# trailer: a-trailer
# discount:
#   share: 3%
#   reason: why
# note: for the shop only
`;
}
