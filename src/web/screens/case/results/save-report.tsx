import { takeInResultInEnglish } from '#content/wording/app-take-in-result.ts'
import { writeOru } from '#core/laboratory/hl7/write-oru.ts'
import { reportOfResult } from '#core/laboratory/of-result.ts'
import { writeTable } from '#core/laboratory/write-table.ts'
import { fill } from '#core/outcome/finding.ts'
import type { ResultLine } from '#core/owed/specimen-loop.ts'
import { saveText } from '../../../design/save-text.ts'
import { useCaseView } from '../case-view.ts'

const words = takeInResultInEnglish.save

/** A report for another program, as a table or as a message: it is read there as it was read here. */
export function SaveReport({ result }: { readonly result: ResultLine }) {
  const { file } = useCaseView()
  const report = reportOfResult(result, file)
  const title = fill(words.title, { name: report.animal.name ?? '', number: report.accession ?? report.label ?? '' })
  return (
    <p data-screen-only>
      <button type="button" data-weight="quiet" onClick={() => saveText(title, writeTable([report]), 'csv')}>
        {words.table}
      </button>
      <button type="button" data-weight="quiet" onClick={() => saveText(title, writeOru(report), 'hl7')}>
        {words.message}
      </button>
    </p>
  )
}
