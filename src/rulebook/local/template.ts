import { commentsOf } from './comments.ts';
import type { Agency } from './schema.ts';

/** A text in YAML's double quotes, whatever stands in it. */
const quoted = (text: string): string => JSON.stringify(text);

/** Some lines as comments. */
const remark = (...lines: readonly string[]): string => lines.map((line) => `# ${line}`.trimEnd()).join('\n');

/**
 * The files of a new folder, by their names: what was answered filled in, everything else as an example behind comment marks, so that the folder builds as it is.
 * The comments are those of the schema, whose text is handed in.
 */
export function newFolder(agency: Agency, schemaText: string): Readonly<Record<string, string>> {
  const comment = (schema: string, field: string): string => {
    const found = commentsOf(schemaText, schema).get(field);
    if (found === undefined) throw new Error(`found no comment on "${field}" in ${schema}, expected one`);
    return found;
  };
  const field = (name: Exclude<keyof Agency, 'logo'>): string =>
    `${remark(comment('agencySchema', name))}\n${name}: ${name === 'version' ? agency[name] : quoted(agency[name])}`;
  const example = (schema: string, fields: readonly (readonly [name: string, text: string])[]): string =>
    fields.flatMap(([name, text]) => [`#   # ${comment(schema, name)}`, `#   ${name}: ${text}`]).join('\n');
  const begin = remark(
    'Take away the "# " before a line to make it count, and keep the spaces after it as they are.',
  );
  const check = remark('', 'npm run local:check FOLDER says what is wrong, with the line.');
  return {
    'agency.yaml': `${[
      remark('Whose folder this is.'),
      ...(['id', 'name', 'short', 'contact', 'area', 'answers', 'version', 'based_on'] as const).map(field),
      remark(comment('agencySchema', 'logo'), 'logo: our-mark.png'),
    ].join('\n\n')}\n`,
    'values.yaml': `${[
      remark(
        'Values that differ here, each under the id of its rule: the id stands on the page of the value, above its name.',
      ),
      begin,
      check,
      remark('', 'clearance.flue.to-combustibles:'),
      example('localValueSchema', [
        ['value', '{ kind: at-least, number: 3, unit: in }'],
        ['reason', 'The building office asks for more.'],
        ['source', '{ kind: document, document: our-notice, clause: paragraph 2, read: read }'],
      ]),
    ].join('\n')}\n`,
    'notes.yaml': `${[
      remark('Notes that stand on pages and values under your name, each under a name of your own.'),
      begin,
      check,
      remark('', 'permit:'),
      example('noteSchema', [
        ['title', 'Ask for the permit first'],
        ['says', 'The building office wants the permit on the door before a hole is cut.'],
        ['on', '[do/first-visit, clearance.flue.to-combustibles]'],
        ['source', '{ kind: practice }'],
      ]),
    ].join('\n')}\n`,
    'cautions.yaml': `${[
      remark(
        'Cautions of your own, each under a name of your own. A level is stop (nothing goes on until it is settled), warn (harm is near)',
        'or note (worth knowing).',
      ),
      begin,
      check,
      remark('', 'river-fog:', '  level: warn'),
      example('localCautionSchema', [
        ['says', 'Fog leaves a metal roof wet long after the sun is up.'],
        ['do', 'Stay off it until it is dry.'],
        ['on', '[caution.roof.falls, do/marking-out]'],
      ]),
      remark('  source: { kind: practice }'),
    ].join('\n')}\n`,
    'sources.yaml': `${[
      remark(
        'Documents that your values rest on, each under an id of your own: regulation, standard or handbook.',
      ),
      begin,
      check,
      remark(
        '',
        'our-notice:',
        '  kind: regulation',
        '  document: Our notice 12',
        '  title: Clear spaces about flues',
        '  edition: "2026"',
        '  publisher: The building office',
        '  standing: Binding on work that needs a permit.',
      ),
    ].join('\n')}\n`,
    'pages/about-us.mdx': [
      '---',
      `title: ${quoted(`About ${agency.name}`)}`,
      'summary: Whom to ask, and where.',
      '---',
      '',
      'Write here what a crew should know of you. Leave an empty line between paragraphs.',
      '',
    ].join('\n'),
  };
}
