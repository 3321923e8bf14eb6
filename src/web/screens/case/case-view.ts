import { createContext, useContext } from 'react'
import { hygieneRules } from '#content/follow-up/hygiene-rules.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { formulary } from '#content/formulary/index.ts'
import { procedures } from '#content/procedures/index.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { namesInEnglish } from '#content/wording/app-case.ts'
import { type Chapters, chaptersOf } from '#core/chapters/chapters-of.ts'
import { type Sides, sidesOf } from '#core/chapters/sides.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { owedOf } from '#core/owed/owed.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import { gistOf } from '#core/reading/gist.ts'
import { type Library, nameOfEntry, namesOf } from '#core/reading/names-of.ts'
import type { SaidRow } from '#core/reading/said.ts'
import { sayBody } from '#core/reading/say-body.ts'
import type { OpenCase } from '../../journal/cases.ts'
import { formNamed, wordsOfKind } from './entry-words.ts'

export const library: Library = { drugs: formulary, procedures, pauses: spokenPauses, words: namesInEnglish }

/** One open case and what every part of its page asks of it, worked out once. */
export type CaseView = {
  readonly file: CaseFile
  /** Its place in the address: `tansy`. */
  readonly id: string
  readonly keptAside: OpenCase['keptAside']
  readonly unsent: ReadonlySet<string>
  /** The registers around it, each row with who wrote it and when. */
  readonly registers: OpenCase['rows']
  readonly chapters: Chapters
  readonly owed: readonly OwedItem[]
  readonly sides: Sides
  readonly operations: readonly OperationOnFile[]
  readonly rows: (line: Line) => readonly SaidRow[]
  readonly gist: (line: Line) => string
  readonly nameOfEntry: (id: string) => string
}

export function caseViewOf(open: OpenCase, id: string): CaseView {
  const { file, keptAside, unsent, rows: registers } = open
  const { owed } = owedOf(file, procedures, { rules: owedRules, hygiene: hygieneRules, keptAside })
  const name = (entry: string) => nameOfEntry(entry, file, library)
  const read = new Map<string, readonly SaidRow[]>()
  const rows = (line: Line) => {
    const known = read.get(line.header.id)
    if (known) return known
    const made = rowsOf(line, file)
    read.set(line.header.id, made)
    return made
  }
  return {
    file,
    id,
    keptAside,
    unsent,
    registers,
    owed,
    chapters: chaptersOf(file, { procedures, owed }),
    sides: sidesOf(file.theCase),
    operations: operationsOf(file),
    rows,
    gist: (line) => gistOf(line.header.kind, rows(line), name),
    nameOfEntry: name,
  }
}

/** The answers of a line; none when its body was erased or comes from a newer version. */
export function rowsOf(line: Pick<Line, 'header' | 'body' | 'known' | 'erased'>, file: CaseFile): SaidRow[] {
  const form = formNamed(line.header.kind)
  if (!form || !line.known || line.erased || line.body === null) return []
  return sayBody(form, line.body, { words: wordsOfKind(line.header.kind), names: namesOf(line, file, library) })
}

export const CaseContext = createContext<CaseView | null>(null)

/** The case around this part of the page. */
export function useCaseView(): CaseView {
  const view = useContext(CaseContext)
  if (!view) throw new Error('No case is open here.')
  return view
}
