import { join } from 'node:path'
import { InputError } from '#actions/input.ts'
import { caseFile } from '#actions/journal/case-file.ts'
import { type ReadJournal, readJournal } from '#actions/journal/read-journal.ts'
import { packOf } from '#actions/papers/pack.ts'
import { languages, type OwnerLanguage } from '#content/languages/index.ts'
import { caseStreams } from '#core/journal/case-file.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { type Moment, readMoment } from '#core/time/moment.ts'
import { ownerLanguageOf } from '#documents/case/owner-words.ts'
import { pdfPress } from '#documents/render/pdf.ts'
import { loadFonts } from '#server/fonts.ts'
import type { CommandFile } from '../command.ts'
import { readText } from '../read-input.ts'
import { makeOutputFolder, writeOutput } from '../write-output.ts'

type Options = {
  readonly out: string
  readonly lang?: string
  readonly case?: string
  readonly on?: string
  readonly text?: boolean
}

export const pack: CommandFile = {
  name: 'pack',
  add: (program, world) => {
    program
      .command('pack')
      .description('every document that a case has reached; prints the list as JSON')
      .argument('<file>', 'a case or journal file')
      .requiredOption('--out <folder>', 'where the documents go')
      .option('--case <stream>', 'which case, when the file holds several')
      .option('--on <day>', 'the date on the papers; the time of the last entry when none is named')
      .option('--text', 'every paper as plain text too')
      .option('--lang <tag>', 'language of what the owner reads: en or es; that of the household when none is named')
      .action(async (path: string, options: Options) => {
        const language = languageOf(options.lang)
        const text = await readText(path)
        const journal = readJournal(text)
        const file = caseFile(journal, streamOf(journal, options.case))
        const { documents, notYet } = packOf(file, dateOf(file, options.on), pdfPress(loadFonts()), {
          text: options.text === true,
          ...(language && { language }),
        })
        makeOutputFolder(options.out)
        for (const { file: name, content } of documents) writeOutput(join(options.out, name), content)
        writeOutput(join(options.out, 'journal.jsonl'), text)
        const list = documents.map(({ content, ...rest }) => ({ ...rest, bytes: Buffer.byteLength(content) }))
        const copy = {
          file: 'journal.jsonl',
          paper: 'journal',
          title: 'The journal, lossless',
          mediaType: 'application/jsonl',
        }
        world.out(`${JSON.stringify([...list, copy], null, 2)}\n`)
        for (const { paper, because } of notYet) world.err(`not yet: ${paper}: ${because}\n`)
      })
  },
}

function languageOf(tag: string | undefined): OwnerLanguage | undefined {
  if (tag === undefined) return undefined
  const language = ownerLanguageOf(tag)
  if (language !== null) return language
  const known = Object.keys(languages).join(', ')
  throw new InputError(
    'unknown-language',
    'lang',
    `Owners can read ${known}, not yet ${tag}; docs/how-to/add-a-language.md says how to add one.`,
  )
}

function streamOf({ entries }: ReadJournal, wanted: string | undefined): string {
  const streams = caseStreams(entries)
  const stream =
    wanted === undefined && streams.length === 1
      ? streams[0]
      : streams.find((one) => one === wanted || one === `case:${wanted}`)
  if (stream !== undefined) return stream
  const names = streams.map((one) => one.slice('case:'.length)).join(', ')
  throw new InputError(
    'case-missing',
    'case',
    `Name one case of the file with --case: ${names || 'the file holds none'}.`,
  )
}

/** The date on the papers: as given, else the moment of the newest entry, so that the same file gives the same bytes. */
function dateOf({ clinic: { zone }, theCase }: CaseFile, given: string | undefined): Moment {
  if (given !== undefined) {
    const moment = readMoment(given, zone)
    if ('because' in moment)
      throw new InputError('wrong-date', 'on', `on: "${given}" is not a date; write it like 2026-03-10.`)
    return moment
  }
  const newest = theCase.lines
    .map((line) => line.header.writtenAt)
    .sort()
    .at(-1)
  if (newest === undefined) throw new InputError('case-empty', 'case', 'The case has no entries.')
  return { at: newest, zone, precision: 'minute', by: 'clock' }
}
