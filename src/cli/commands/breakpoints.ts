import { type CheckedEdition, checkEditionFile } from '#actions/culture/check-edition-file.ts'
import { editionFileWords as words } from '#content/wording/edition-file.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { type CommandFile, Exit } from '../command.ts'
import { readText } from '../read-input.ts'

export const breakpoints: CommandFile = {
  name: 'breakpoints',
  add: (program, world) => {
    program
      .command('breakpoints')
      .description("the clinic's own edition of breakpoints")
      .command('check')
      .description(
        'read the file of an edition; status 3 with every fault by line and column (docs/breakpoint-file.md)',
      )
      .argument('<file>', 'a table of rows, or - for standard input')
      .option('--json', 'one JSON document on standard output')
      .action(async (file: string, { json }: { readonly json?: boolean }) => {
        const checked = checkEditionFile(await readText(file))
        world.out(json ? `${JSON.stringify(checked)}\n` : told(checked))
        if (!checked.ok) throw new Exit(3)
      })
  },
}

function told(checked: CheckedEdition): string {
  if (checked.ok) return `${fill(words.whole, { name: checked.edition, rows: sayCount(words.rows, checked.rows) })}\n`
  const { faults } = checked
  return [...faults.map(({ text }) => text), sayCount(words.nothing, faults.length)].map((line) => `${line}\n`).join('')
}
