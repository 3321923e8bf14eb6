import type { Page } from '@playwright/test'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { act, type Program, writeNow } from '../clinic.ts'
import { AgreementPage } from '../pages/agreement-page.ts'
import type { Stage } from './stage.ts'
import { open, type State } from './state.ts'

const stream = 'case:juniper'
const gbp = (amount: string) => ({ amount, currency: 'GBP' })

/** An edition of the estimate that Juniper's owner accepted. */
async function accept(program: Program, page: Page, edition: number, ceiling: string): Promise<void> {
  const on = { at: new Date().toISOString(), zone: 'Europe/London', precision: 'minute', by: 'clock' } as const
  const answer = { said: 'accepted' as const, by: 'contact-strand', on }
  const body = { ...estimate.example, edition, ceiling: gbp(ceiling), validUntil: '2099-01-01', answer }
  await writeNow(program, page, stream, [{ kind: 'estimate', body }])
}

/** The talk about an agreement, from half done to broken. Each begins where the one before ended. */
export const agreements: readonly State[] = [
  {
    name: 'agreement-half-done',
    seat: 'surgeon',
    printed: true,
    bring: async (page, url, { invented }) => {
      await accept(invented, page, 1, '3700.00')
      await open(page, `${url}/case/juniper/agreement`)
      const talk = new AgreementPage(page)
      await talk.talkOver(await talk.nameOf('contact-strand'), 'looks after the animal, no more')
      await page.getByText('This person cannot agree like this').waitFor()
      await page.evaluate('scrollTo(0, 0)')
    },
  },
  {
    name: 'agreement-authorised',
    seat: 'surgeon',
    bring: async (page) => {
      await new AgreementPage(page).choose('On what authority', 'somebody the owner authorised')
      await page.getByLabel('Up to what amount').waitFor()
    },
  },
  {
    name: 'agreement-read-through',
    seat: 'surgeon',
    printed: true,
    bring: async (page) => {
      const talk = new AgreementPage(page)
      await talk.choose('On what authority', 'the owner')
      await talk.choose('How consent is given', 'signed here, on this screen')
      await talk.choose('Copy for the owner', 'on paper')
      await page.getByRole('button', { name: 'Read it through before signing' }).click()
      await page.getByRole('img', { name: 'Sign in this box' }).scrollIntoViewIfNeeded()
      await talk.sign()
    },
  },
  {
    name: 'agreement-signed',
    seat: 'surgeon',
    printed: true,
    bring: async (page) => {
      await page.getByRole('button', { name: 'Yes, this is agreed' }).click()
      await page.getByText('It holds.').waitFor()
    },
  },
  {
    name: 'agreement-costs-near',
    seat: 'surgeon',
    bring: async (page, url, { invented }) => {
      const body = {
        part: 'theatre' as const,
        what: 'Operation and anaesthetic',
        amount: gbp('3500.00'),
        finished: false,
        by: 'person-desk',
      }
      await writeNow(invented, page, stream, [{ kind: 'cost-so-far', body }])
      await open(page, `${url}/case/juniper/agreement`)
      await page.getByText('Spent so far').waitFor()
    },
  },
  {
    name: 'agreement-broken',
    seat: 'surgeon',
    printed: true,
    bring: async (page, url, { invented }) => {
      await accept(invented, page, 2, '3701.00')
      await open(page, `${url}/case/juniper/agreement`)
      await page.getByText(/^Broken: the ceiling was/).waitFor()
    },
  },
  {
    name: 'theatre-list-asks-again',
    seat: 'surgeon',
    printed: true,
    bring: async (page, url) => {
      await open(page, `${url}/theatre`)
      await page.getByText('Ask for consent again').first().waitFor()
    },
  },
  {
    name: 'room-asks-again',
    seat: 'surgeon',
    bring: (page, url) => open(page, `${url}/case/juniper/room/operation-juniper`),
  },
  {
    name: 'agreement-taken-back',
    seat: 'surgeon',
    bring: async (page, url, { invented }) => {
      const body = { by: 'contact-strand', how: 'by-phone' as const, why: null, takenBy: 'person-desk' }
      const subject = { kind: 'ear' as const, animal: 'animal-juniper', side: 'RIGHT' as const }
      await writeNow(invented, page, stream, [{ kind: 'consent-withdrawn', subject, body }])
      await open(page, `${url}/case/juniper/agreement`)
      await page.getByText(/RIGHT: taken back by/).waitFor()
    },
  },
]

/** The page an owner opens behind a link that was made on the case, and what stands on the case then. */
const ownerAddresses = new WeakMap<Stage, string>()
const shown = (stage: Stage, asked: string) => `${ownerAddresses.get(stage) ?? ''}/before${asked}`

function ofOwner(name: string, asked: string): State {
  return { name, seat: 'surgeon', bring: (page, _url, stage) => open(page, shown(stage, asked)) }
}

/** A page behind the link of Sorrel, who is at home. */
function ofHome(name: string, path: string): State {
  return {
    name,
    seat: 'surgeon',
    printed: true,
    bring: async (page, url) => {
      const { owners } = await act<{ owners: readonly { contact: string }[] }>(
        page.context(),
        url,
        'list-owner-links',
        {
          stream: 'case:sorrel',
        },
      )
      const about = { stream: 'case:sorrel', contact: owners[0]?.contact, use: 'private' }
      const link = await act<{ path: string }>(page.context(), url, 'make-owner-link', about)
      await open(page, `${url}${link.path}/${path}`)
    },
  }
}

export const ownerPages: readonly State[] = [
  {
    name: 'owner-links',
    seat: 'surgeon',
    bring: async (page, url, stage) => {
      await open(page, `${url}/case/tansy`)
      await page.getByText('Show the private links of this case').click()
      await page.getByRole('button', { name: 'Make a private link for Rosalind Okafor' }).click()
      ownerAddresses.set(stage, await page.getByLabel('Address').inputValue())
      await page.getByRole('list', { name: 'Links of this case' }).scrollIntoViewIfNeeded()
    },
  },
  ofOwner('owner-page', ''),
  ofOwner('owner-page-facing', '?a=teca-lbo&b=no-treatment'),
  ofOwner('owner-page-step', '?step=3'),
  ofOwner('owner-page-spanish', '?language=es&a=teca-lbo&b=no-treatment'),
  {
    name: 'owner-page-sent',
    seat: 'surgeon',
    bring: async (page, _url, stage) => {
      await open(page, shown(stage, ''))
      await page.getByRole('radio', { name: 'Not decided yet' }).check()
      await page.getByLabel('Questions to bring').fill('Who gives the eye gel at night?')
      await page.getByRole('button', { name: 'Send this to the clinic' }).click()
      await page.getByRole('status').waitFor()
    },
  },
  ofHome('owner-home', 'home'),
  ofHome('owner-home-spanish', 'home?language=es'),
  ofHome('owner-notes', 'notes'),
  ofHome('owner-notes-spanish', 'notes?language=es'),
  {
    name: 'owner-notes-on-the-case',
    seat: 'surgeon',
    printed: true,
    bring: async (page, url, { invented }) => {
      await writeNow(invented, page, 'case:sorrel', [{ kind: 'owner-note' }])
      await open(page, `${url}/case/sorrel`)
      await page.getByRole('heading', { name: 'What the owner wrote' }).scrollIntoViewIfNeeded()
    },
  },
  {
    name: 'owner-questions-answered',
    seat: 'surgeon',
    bring: (page, _url, stage) => open(page, `${ownerAddresses.get(stage) ?? ''}/questions`),
    printed: true,
  },
  {
    name: 'owner-questions-form',
    seat: 'surgeon',
    bring: (page, _url, stage) => open(page, `${ownerAddresses.get(stage) ?? ''}/questions?change=1`),
  },
  {
    name: 'owner-questions-spanish',
    seat: 'surgeon',
    bring: (page, _url, stage) => open(page, `${ownerAddresses.get(stage) ?? ''}/questions?change=1&language=es`),
  },
  {
    name: 'owner-questions-kept-on-the-phone',
    seat: 'surgeon',
    bring: async (page, _url, stage) => {
      await open(page, `${ownerAddresses.get(stage) ?? ''}/questions?change=1`)
      await page.locator('#kept-here[data-ready]').waitFor({ state: 'attached' })
      await page.locator('[name="swelling.LEFT"][value="yes"]').check()
      await page.locator('[name="anything-else"]').fill('It came on Monday.')
      await page.locator('.kept-state').first().waitFor()
    },
  },
  {
    name: 'owner-questions-waiting',
    seat: 'surgeon',
    bring: async (page) => {
      await page.route('**/questions?*', (route) =>
        route.request().method() === 'POST' ? route.abort('internetdisconnected') : route.fallback(),
      )
      await page.getByRole('button', { name: 'Send to the clinic' }).click()
      await page.locator('#kept-here-now').waitFor()
    },
    leave: (page) => page.unroute('**/questions?*'),
  },
  {
    name: 'case-questions',
    seat: 'surgeon',
    printed: true,
    bring: async (page, url) => {
      await open(page, `${url}/case/tansy`)
      await page.getByRole('link', { name: 'Open the questions: After a year' }).click()
      await page.getByRole('heading', { name: 'What came back' }).waitFor()
    },
  },
  {
    name: 'case-questions-by-phone',
    seat: 'surgeon',
    bring: async (page) => {
      await page.getByRole('button', { name: 'Change the answers with the owner' }).click()
      await page.getByRole('button', { name: 'Keep these answers' }).waitFor()
    },
  },
  { name: 'owner-page-closed', seat: 'surgeon', bring: (page, url) => open(page, `${url}/o/${'x'.repeat(43)}`) },
]

/** The short form of a referring practice behind a link that was made on the case, and what stands on the case then. */
const vetAddresses = new WeakMap<Stage, string>()
const form = (stage: Stage) => vetAddresses.get(stage) ?? ''

export const vetForms: readonly State[] = [
  {
    name: 'vet-links',
    seat: 'surgeon',
    bring: async (page, url, stage) => {
      await open(page, `${url}/case/barley`)
      await page.getByText('Show the links for the referring practice').click()
      await page.getByRole('button', { name: 'Make a link' }).click()
      vetAddresses.set(stage, await page.getByLabel('Address').inputValue())
      await page.getByRole('list', { name: 'Links of the referring practice' }).scrollIntoViewIfNeeded()
    },
  },
  { name: 'vet-form', seat: 'surgeon', bring: (page, _url, stage) => open(page, form(stage)) },
  {
    name: 'vet-form-refused',
    seat: 'surgeon',
    bring: async (page, _url, stage) => {
      await open(page, form(stage))
      await page.getByLabel('Wound', { exact: true }).selectOption('closed')
      await page.getByLabel(/^Tear test/).fill('low')
      await page.getByRole('button', { name: /^Send this to/ }).click()
      await page.getByRole('alert').waitFor()
      await page.waitForLoadState()
    },
  },
  {
    name: 'vet-form-sent',
    seat: 'surgeon',
    bring: async (page, _url, stage) => {
      await open(page, form(stage))
      await page.getByLabel('Who examined').fill('Wren Hollis')
      await page.getByLabel('Day of the look').fill(new Date().toISOString().slice(0, 10))
      await page.getByLabel('Wound', { exact: true }).selectOption('closed')
      await page.getByRole('button', { name: /^Send this to/ }).click()
      await page.getByRole('status').waitFor()
      await page.waitForLoadState()
    },
  },
  { name: 'vet-form-closed', seat: 'surgeon', bring: (page, url) => open(page, `${url}/v/${'x'.repeat(43)}`) },
]
