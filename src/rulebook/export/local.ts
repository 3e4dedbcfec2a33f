import type { Local } from '../local/local.ts';
import type { RulebookData } from '../rulebook.ts';

/** What is local in a rulebook as the text of a JSON file: an agency's own list, to publish or to hold beside the next edition. */
export const localJson = (base: RulebookData, resolved: RulebookData, local: Local): string =>
  `${JSON.stringify(
    {
      format: 'heel-to-ridge local',
      version: resolved.version,
      agencies: local.agencies.map(({ picture: _picture, ...agency }) => agency),
      values: local.changes.map(({ file: _file, line: _line, ...change }) => ({
        ...change,
        in_the_rulebook: base.rules[change.rule]?.value,
      })),
      follows: local.recomputed.map((rule) => ({
        rule,
        value: resolved.rules[rule]?.value,
        in_the_rulebook: base.rules[rule]?.value,
      })),
      notes: local.notes,
      cautions: local.cautions,
    },
    null,
    1,
  )}\n`;
