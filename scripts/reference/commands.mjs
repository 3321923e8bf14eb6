import { head, plainText, sentence, table } from './markdown.mjs'

/** The command line: every command with its arguments and options, as its own help says them. */
export function commandsPage({ program, operations }) {
  const commands = [...program.commands].sort((a, b) => (a.name() < b.name() ? -1 : 1))
  return [
    ...head(
      'Commands',
      '`./quiet-ear COMMAND [options]` at the root of the repository. A file may be `-` for standard input. Exit 0: answered, also when the answer is a refusal; 2: the input is wrong, with the field named; 3: checked and found broken; 1: a fault of the program.',
    ),
    ...table(
      ['command', 'does'],
      commands.map((one) => [`[${one.name()}](#${one.name()})`, plainText(one.description())]),
    ),
    ...commands.flatMap((one) => [
      `## ${one.name()}`,
      '',
      `${sentence(plainText(one.description()))} \`./quiet-ear ${one.name()} ${one.usage()}\``,
      '',
      ...table(
        ['option', 'means'],
        one.options.map((option) => [
          `\`${option.flags}\``,
          `${plainText(option.description)}${option.mandatory ? ' (needed)' : ''}`,
        ]),
      ),
    ]),
    '## Operations of calc',
    '',
    'Bare numbers; the unit stands in the name of the field.',
    '',
    ...table(
      ['operation', 'does', 'fields', 'formula', 'source'],
      operations.map((one) => [
        `\`${one.op}\``,
        plainText(one.sentence),
        one.fields.map(({ name, optional }) => `\`${name}\`${optional ? ' (may be left out)' : ''}`).join(', '),
        plainText(one.formula),
        one.sources.map(({ id, known }) => `[${id}](sources.md#${id}) (${known})`).join(', '),
      ]),
    ),
  ]
}
