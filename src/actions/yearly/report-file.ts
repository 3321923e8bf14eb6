import { yearlyRefusals } from '#content/wording/yearly-refusals.ts'
import { fold } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Paper } from '#documents/render/model.ts'
import type { World } from '../action.ts'
import { callerIn } from '../caller.ts'
import type { PaperFile } from '../papers/paper-file.ts'
import { Refused } from '../refused.ts'
import { frozenReports } from './frozen-reports.ts'
import { remakeReport } from './remake-report.ts'
import { reportFiles, rowFiles, sayBroken } from './report-files.ts'

/** Who takes rows out of the house. */
const givesRows: readonly string[] = ['surgeon', 'manager']

/** One file of a frozen report by its name; rows for somebody outside only to whoever may give them. */
export async function reportFile(
  { year, file: name }: { readonly year: number; readonly file: string },
  world: World,
  print: (paper: Paper) => Promise<Uint8Array>,
): Promise<PaperFile> {
  const { clinic, caller } = callerIn(world)
  const reports = frozenReports(fold(await world.store.stream(clinic, 'clinic')))
  const report = reports.find(({ line }) => line.body.year === year)
  if (!report)
    throw notFrozen(
      year,
      reports.map(({ line }) => line.body.year),
    )
  const made = await remakeReport(world.store, clinic, report)
  if (made.kind !== 'remade') throw new Refused(409, made.kind, sayBroken(report, made))
  const rows = givesRows.includes(caller.role) || caller.keeper ? rowFiles(report, made).files : []
  const found = [...reportFiles(report, made), ...rows].find(({ file }) => file === name)
  if (!found) throw new Refused(404, 'no-such-file', 'The report has no file of that name, or it is not yours to take.')
  const content = found.make()
  return {
    mediaType: found.mediaType,
    content: typeof content === 'string' ? content : await print(content),
    shown: found.mediaType === 'application/pdf',
  }
}

export function notFrozen(year: number, years: readonly number[]): Refused {
  const said = years.length === 0 ? yearlyRefusals.nothing : years.join(', ')
  return new Refused(404, 'not-frozen', fill(yearlyRefusals['not-frozen'], { year: String(year), years: said }))
}
