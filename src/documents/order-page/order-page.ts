import type { OrderState } from '../../plan/index.ts';
import { alternativesSection } from './alternatives-section.ts';
import { costingSection, sensitivitySection } from './costing-section.ts';
import { driftSection } from './drift-section.ts';
import { electricsSection } from './electrics-section.ts';
import { floatSection } from './float-section.ts';
import { laminateSection } from './laminate-section.ts';
import { pageHead } from '../sections/head.ts';
import { knownSection } from './known-section.ts';
import { limitsSection } from './limits-section.ts';
import { planSection } from './plan-section.ts';
import type { YardPage } from '../blocks/page.ts';
import { speedSection } from './speed-section.ts';
import { towingSection } from './towing-section.ts';
import { variationsSection } from './variations-section.ts';
import { boatName } from '../sections/words.ts';

/**
 * The yard's page of one order; undefined when it could not be computed.
 *
 * @param fontCss - `@font-face` rules: a drawing is an image, and an image cannot use the fonts of its page
 */
export function orderPageView(state: OrderState, fontCss: string): YardPage | undefined {
  const { entry, issued, drift, account } = state;
  const { figures, quoted, alternatives, variations } = entry;
  if (!figures || !quoted) return undefined;
  const { order, yard } = figures.build;
  const heading = `${order.number}: ${boatName(figures.build)}`;
  return {
    document: pageHead(
      yard,
      heading,
      `What order ${order.number} costs, earns, weighs and does; for the yard only`,
    ),
    heading,
    lead: `${order.customer.name}. For the yard only: costs and margins are on this page.`,
    links: [{ text: 'All orders', page: '../index.html' }],
    hasContents: true,
    parts: [
      costingSection(figures, account),
      sensitivitySection(figures, account),
      ...(alternatives.length > 0 ? [alternativesSection(alternatives, quoted)] : []),
      floatSection(figures, fontCss),
      speedSection(figures, fontCss),
      limitsSection(figures),
      towingSection(figures, fontCss),
      knownSection(figures),
      laminateSection(figures),
      electricsSection(figures, fontCss),
      driftSection(issued, drift, yard),
      variationsSection(variations, quoted, account),
      planSection(state, figures, yard),
    ],
  };
}
