import { afterKnown, afterTopics } from '#content/owner-page/known.ts'
import { ownerPageEdition } from '#content/wording/owner-page.ts'
import { totalsOf } from '#core/agreement/estimate.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { earOf } from '../case/case-words.ts'
import type { Numbered } from '../leaflet/numbered-sources.ts'
import { type Html, html } from '../render/markup.ts'
import type { OwnerPageInput } from './input.ts'
import { earsInWords, lines, listOf, nameOf, type Part } from './parts.ts'
import { plateSteps } from './plate-steps.ts'

/** What is to be decided, what was talked over so far, and what happens without treatment. */
export function decisionPart(input: OwnerPageInput): Part {
  const { file, words } = input
  const { page, plate, options } = words
  const ears = earsInWords(input)
  const about = { name: nameOf(input), ears: ears ?? page.bothEars }
  const talked = file.theCase.live('choice').flatMap((line) => {
    const side = earOf(line)
    return line.body.options.map(({ option, answer, because }) => ({
      cells: [options.options[option].name, side ? plate.sides[side] : '', page.answers[answer], because],
    }))
  })
  const { option, side, answer, because } = page.talkedColumns
  return {
    id: 'decision',
    title: page.decision,
    body: [
      ...lines([ears === null ? page.notReached.ear : fill(page.decisionText, about), page.decisionTime]),
      html`<h3>${page.natural}</h3>\n`,
      ...lines([page.naturalText]),
      html`<h3>${page.talked}</h3>\n`,
      ...(talked.length === 0
        ? lines([page.talkedNone])
        : [
            tableHtml(
              [option, side, answer, because],
              talked.map(({ cells }) => cells),
            ),
          ]),
    ],
  }
}

/** Hearing, looks and the course of time after the operation, and what to phone for. */
export function afterPart(input: OwnerPageInput, numbered: Numbered): Part {
  const { page, home, leaflet } = input.words
  const about = { name: nameOf(input) }
  return {
    id: 'after',
    title: page.after,
    body: [
      ...afterTopics.map(
        (topic) => html`<h3>${page.afterTopics[topic]}</h3>
${lines(page.afterText[topic].map((text) => fill(text, about)))}<p><small>[${numbered(afterKnown[topic])}]</small></p>
`,
      ),
      html`<h3>${page.watch}</h3>\n`,
      listOf(home.phoneNowItems.value),
      ...lines([fill(page.watchNow, about)]),
      html`<h3>${page.stays}</h3>\n`,
      listOf(leaflet.staysText.value.map((text) => fill(text, about))),
    ],
  }
}

/** The newest estimate in full, with who answered it; or that there is none yet. */
export function estimatePart({ file, words: { page, dates } }: OwnerPageInput): Part {
  const about = { id: 'estimate', title: page.estimate }
  const estimate = file.theCase.latest('estimate')?.body
  if (!estimate) return { ...about, body: lines([page.estimateNone]) }
  const totals = totalsOf(estimate)
  const { what, low, high } = page.estimateColumns
  const until = sayStoredDay(estimate.validUntil, dates)
  const sum =
    totals.kind === 'refusal'
      ? page.estimateMixed
      : fill(page.estimateSum, {
          edition: String(estimate.edition),
          low: sayMoney(totals.answer.low),
          high: sayMoney(totals.answer.high),
          until,
        })
  return {
    ...about,
    body: [
      ...lines([
        sum,
        fill(page.estimateCeiling, { ceiling: sayMoney(estimate.ceiling) }),
        page.estimateAnswer[estimate.answer?.said ?? 'none'],
      ]),
      tableHtml(
        [what, low, high],
        estimate.lines.map((line) => [line.what, sayMoney(line.low), sayMoney(line.high)]),
      ),
    ],
  }
}

function sayMoney({ amount, currency }: { readonly amount: string; readonly currency: string }): string {
  return `${amount} ${currency}`
}

export function decidePart(input: OwnerPageInput): Part {
  const { page } = input.words
  const steps = page.decideSteps.map((text) => html`<li>${fill(text, { name: nameOf(input) })}</li>`)
  return { id: 'decide', title: page.decide, body: [html`<ol>${steps}</ol>\n`] }
}

/** Every source by its number, and everything a reader may ask about the page itself. */
export function sourcesPart(
  { file, on, words: { page, dates, leaflet, aboutTranslation } }: OwnerPageInput,
  { numbered, listed }: { readonly numbered: Numbered; readonly listed: () => string[] },
): Part {
  const stepsKnown: readonly Provenance[] = plateSteps.flatMap(({ known }) => known)
  numbered([...stepsKnown, leaflet.staysText])
  const { about } = page
  const facts = [
    [about.edition, ownerPageEdition],
    [about.made, sayMoment(on, dates)],
    [about.by, fill(about.byText, { clinic: file.clinic.name })],
    [about.paid, about.paidText],
    [about.update, about.updateText],
    [about.notTested, about.notTestedText],
  ] as const
  return {
    id: 'sources',
    title: page.sources,
    body: [
      ...lines([page.sourcesIntro]),
      html`<ul class="sources">${listed().map((line) => html`<li>${line}</li>`)}</ul>\n`,
      html`<h3>${page.ownResults}</h3>\n`,
      ...lines([page.ownResultsText, ...(aboutTranslation === null ? [] : [aboutTranslation])]),
      html`<h3>${about.title}</h3>
<dl>${facts.map(([term, text]) => html`<div><dt>${term}</dt><dd>${text}</dd></div>`)}</dl>
`,
    ],
  }
}

/** The roles are written out: on a phone the rows are arranged anew, and a browser then forgets what they are. */
function tableHtml(heads: readonly string[], rows: readonly (readonly string[])[]): Html {
  const cells = (row: readonly string[]) =>
    row.map((text, at) =>
      at === 0
        ? html`<th scope="row" role="rowheader">${text}</th>`
        : html`<td role="cell"><b class="of">${heads[at] ?? ''}</b>${text}</td>`,
    )
  return html`<table role="table"><thead><tr role="row">${heads.map((head) => html`<th scope="col" role="columnheader">${head}</th>`)}</tr></thead>
<tbody>${rows.map((row) => html`<tr role="row">${cells(row)}</tr>\n`)}</tbody></table>
`
}
