import type { Context, Hono } from 'hono'
import { keepAnswers } from '#actions/owner/keep-answers.ts'
import { questionRules } from '#content/questionnaires/question-rules.ts'
import { entryId } from '#core/journal/entry-id.ts'
import { type Asking, isOpen } from '#core/questionnaire/askings.ts'
import { clockOf } from '#core/time/moment.ts'
import { isHome } from '#documents/owner-link/destinations.ts'
import { keptSinceOf } from '#documents/owner-link/kept-since.ts'
import { askingsOfContact } from '#documents/questions/askings-of-case.ts'
import type { QuestionsInput, Spoilt } from '#documents/questions/input.ts'
import { askingFor, questionsPage } from '#documents/questions/page.ts'
import { answersSent, saysTheSame } from '#documents/questions/read-form.ts'
import { limitedTo } from '../offer-actions.ts'
import type { MakeWorld } from '../world.ts'
import { type Behind, behindLink, closedFor } from './behind-link.ts'

/** The page of the questions, and the answers that come back from it. */
export function offerQuestions(app: Hono, worldOf: MakeWorld): void {
  const path = '/o/:token/questions'
  app.get(path, (c) =>
    behindLink(c, worldOf, async (behind) => {
      if (!isHome(behind.input)) return c.html(await closedFor(c, behind.world, false), 404)
      return c.html(questionsPage(inputOf(behind, new URL(c.req.url).searchParams, null)))
    }),
  )
  app.post(path, limitedTo(64 * 1024), (c) => behindLink(c, worldOf, (behind) => keep(c, behind)))
}

/** The script asks for JSON and is told what became of it; a browser is led back to the page. */
async function keep(c: Context, behind: Behind): Promise<Response> {
  const { input, opened, world } = behind
  const form = new URLSearchParams(await c.req.text())
  const asScript = c.req.header('accept') === 'application/json'
  const query = new URLSearchParams({ of: form.get('of') ?? '', change: '1' })
  const page = inputOf(behind, query, null)
  const asking = page.asking?.key === form.get('of') ? page.asking : markedInTime(page.askings, form, input)
  // Asked no more in the meantime, as after the day of another operation: the page says so, and nothing is kept.
  if (!asking && asScript) return c.json({ refused: 'over' }, 409)
  if (!asking) return c.html(questionsPage({ ...page, changing: false }), 409)
  const body = answersSent(form, asking, input)
  const again = (because: Spoilt['because']) =>
    asScript
      ? c.json({ refused: because }, 422)
      : c.html(questionsPage({ ...page, spoilt: { because, picked: (field) => form.get(field) } }), 422)
  if (typeof body === 'string') return again(body)
  const id = form.get('entry') ?? ''
  const isSame = saysTheSame(body, asking.answers)
  if (!isSame && !(await keepAnswers(opened, { id, body, standing: asking.answers }, world))) return again('not-kept')
  if (asScript) return c.json({ kept: true, time: clockOf(opened.now, input.file.clinic.zone) })
  const { language } = input.asked
  const done = body.finished ? 'sent' : 'saved'
  // Asked for again with another address, so that going back or reading anew sends nothing twice.
  return c.redirect(`?of=${asking.key}&done=${done}${language === null ? '' : `&language=${language}`}`, 303)
}

/** What was marked while it was asked and waited on a phone past its window is taken all the same. */
function markedInTime(askings: readonly Asking[], form: URLSearchParams, { on }: Behind['input']): Asking | null {
  const since = keptSinceOf(form, on)
  const passed = askings.find(({ key, state }) => key === form.get('of') && state === 'passed')
  return passed && since && since.at >= passed.from && since.at <= passed.until ? passed : null
}

function inputOf(behind: Behind, query: URLSearchParams, spoilt: Spoilt | null): QuestionsInput {
  const { input, opened, world } = behind
  const askings = askingsOfContact(opened.file, opened.now, opened.link.contact)
  const asking = askingFor(askings, query.get('of'))
  const done = (['sent', 'saved'] as const).find((one) => one === query.get('done')) ?? null
  return {
    ...input,
    link: opened.link.id,
    askings,
    asking,
    rules: questionRules,
    changing: query.get('change') === '1' || (asking !== null && isOpen(asking)),
    done,
    spoilt,
    entry: entryId(Date.parse(opened.now), world.secrets.bytes(10)),
  }
}
