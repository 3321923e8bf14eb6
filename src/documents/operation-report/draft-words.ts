import { draftSummaryInEnglish as words } from '#content/wording/app-draft-summary.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { reportInEnglish, specimenWords } from '#content/wording/report.ts'
import type { Side } from '#core/animal/species.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { never } from '#core/outcome/outcome.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import type { DraftFinding } from '#core/theatre/draft-findings.ts'
import type { DraftPlan } from '#core/theatre/draft-plan.ts'
import type { SummaryDraft } from '#core/theatre/draft-summary.ts'
import { sayMark } from '#core/theatre/stamp-gates.ts'
import { clockOf } from '#core/time/moment.ts'
import { drugName } from '../case/drug-name.ts'
import { sayUnit } from '../case/say-quantity.ts'
import { sayAccount } from './emergency-words.ts'
import { spanWords } from './loss.ts'

type Summary = BodyOf<'operation-summary'>
type About = { readonly procedure: Procedure; readonly side: Side; readonly zone: string }

/** A draft as the answers of a summary; an answer that no entry gives is missing. */
export function draftedAnswers(draft: SummaryDraft, about: About): Partial<Summary> {
  const { findings, plan, unsettled: _, ...plain } = draft
  const texts = {
    findings: findings.map((one) => sayFinding(one, about)).join('\n'),
    plan: plan.map((one) => sayPlan(one, about)).join('\n'),
  }
  const said = Object.entries({ ...plain, ...texts }).filter(([, value]) => value !== null && value !== '')
  return Object.fromEntries(said) as Partial<Summary>
}

function sayFinding(finding: DraftFinding, { procedure }: About): string {
  const says = words.findings
  switch (finding.kind) {
    case 'stamp':
      return finding.sentences.join(' ')
    case 'free-stamp':
      return sayFree(finding.stamp.body)
    case 'retraction':
      return fill(says.retraction[finding.times === 1 ? 'one' : 'many'], {
        count: String(finding.times),
        minutes: String(finding.minutes),
      })
    case 'emergency': {
      const { title } = sayAccount(finding.account, procedure)
      const ended = finding.account.shout.ended?.body.text ?? null
      return [fill(says.emergency, { title }), ...(ended === null ? [] : [ended])].join(' ')
    }
    case 'loss': {
      const loss = fill(says.loss, { span: spanWords(finding.sum) })
      return finding.refused === 0 ? loss : `${loss} ${says.lossRefused}`
    }
    case 'count':
      return sayFinal(finding.count.body)
    case 'both-ears':
      return fill(says.bothEars[finding.which], { other: papersInEnglish.sides[finding.other] })
    default:
      return never(finding)
  }
}

function sayFree(body: BodyOf<'theatre-stamp'>): string {
  const said =
    body.answer === 'not-done'
      ? fill(reportInEnglish.notDone, { because: body.text ?? reportInEnglish.noReason })
      : sayMark(body, reportInEnglish).join(' ') || reportInEnglish.stamped
  return fill(words.findings.free, { what: body.checkpoint, said })
}

function sayFinal({ items, throatPack }: BodyOf<'count'>): string {
  const each = items.map(({ what, found, expected }) =>
    fill(reportInEnglish.countItem, { what, found: String(found), expected: String(expected) }),
  )
  return fill(words.findings.count, { items: each.join('; '), pack: reportInEnglish.throatPack[throatPack] })
}

function sayPlan(plan: DraftPlan, { side, zone }: About): string {
  switch (plan.kind) {
    case 'awaited': {
      const { label, site, tests } = plan.specimen.body
      const asked = tests.map((test) => specimenWords.tests[test]).join(', ')
      return fill(words.plan.awaited, { label, site: specimenWords.sites[site], tests: asked })
    }
    case 'dose': {
      const { drug, amount, route, how } = plan.line.body
      const about = {
        drug: drugName(drug),
        amount: sayUnit(amount),
        route: route === null ? '' : ` ${route}`,
        hours: how?.every?.value ?? '',
      }
      return plan.lastAt === null
        ? fill(words.plan.dose, about)
        : fill(words.plan.doseGiven, { ...about, at: clockOf(plan.lastAt, zone) })
    }
    case 'eye':
      return fill(words.plan.eye, { side: papersInEnglish.sides[side], said: plan.sentences.join(' ') })
    default:
      return never(plan)
  }
}
