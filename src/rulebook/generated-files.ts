import { calculationRulesModule, ruleChoicesModule, ruleNotesModule, ruleTypesModule } from './generate.ts';
import type { References } from './references.ts';
import type { RulebookData } from './rulebook.ts';

/** Folders whose code runs in the reader's browser and asks for rules there. */
const askingFolders = ['src/calc/', 'src/job/', 'src/drawings/', 'src/islands/'];

/** What stands at the foot of every sheet of paper: by which rulebook it was worked out, and which of how many sheets it is. */
const paperStyle = ({ version }: RulebookData): string =>
  `@page {
  @bottom-left {
    content: ${JSON.stringify(`Heel to Ridge, rulebook ${version}`)};
    font: 8pt sans-serif;
  }
  @bottom-right {
    content: counter(page) " of " counter(pages);
    font: 8pt sans-serif;
  }
}
`;

/** Every file that is written from the rulebook, with its text. */
export function generatedFiles(data: RulebookData, references: References): [file: string, text: string][] {
  const asked = (id: string) =>
    id.startsWith('caution.') ||
    (references.get(id) ?? []).some((file) => askingFolders.some((folder) => file.startsWith(folder)));
  return [
    ['src/generated/rule-types.ts', ruleTypesModule(data)],
    ['src/generated/rule-choices.ts', ruleChoicesModule(data)],
    ['src/generated/calculation-rules.ts', calculationRulesModule(data, asked)],
    ['src/generated/rule-notes.ts', ruleNotesModule(data, asked)],
    ['src/generated/paper.css', paperStyle(data)],
  ];
}
