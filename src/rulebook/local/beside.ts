import type { RulebookData } from '../rulebook.ts';
import { sourceInBrief } from '../status.ts';
import type { LoadedLocalCaution, LocalAgency } from './local.ts';

/** The rulebook's cautions, each with what agencies say beside it. */
export const withBeside = (
  base: RulebookData['cautions'],
  own: readonly LoadedLocalCaution[],
  agencies: readonly LocalAgency[],
  documents: RulebookData['documents'],
): RulebookData['cautions'] =>
  Object.fromEntries(
    Object.entries(base).map(([id, caution]) => {
      const beside = own
        .filter(({ on }) => on.includes(id))
        .map(({ agency, level, says, do: act, source }) => {
          const name = agencies.find((each) => each.id === agency)?.short ?? agency;
          return { agency: name, level, says, do: act, from: sourceInBrief(source, documents) };
        });
      return [id, beside.length > 0 ? { ...caution, beside } : caution];
    }),
  );
