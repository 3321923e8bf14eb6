import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import type { PreparedReport } from '#actions/yearly/prepare-report.ts'
import type { YearsAnswer } from '#actions/yearly/read-years.ts'
import { reportErratum } from '#core/journal/kinds/report-erratum.ts'
import { act, entriesOf, nurse, writeNow } from '../clinic.ts'
import { EntryForm } from '../pages/entry-form.ts'
import type { Stage } from './stage.ts'
import { open, type State } from './state.ts'

const photograph = fileURLToPath(new URL('../../../docs/plate/dog-transverse-planned-left.png', import.meta.url))

/** Barley's weight of which two corrections stand side by side. */
async function weightOfBarley(page: Page, stage: Stage): Promise<string> {
  const weights = (await entriesOf(stage.invented, page, 'case:barley')).filter(
    ({ header }) => header.kind === 'weight',
  )
  return weights.at(-1)?.header.id ?? ''
}

/** The newest year that can be frozen, frozen and with an erratum; once, whoever asks for it again. */
async function frozenWithErratum(page: Page, stage: Stage): Promise<void> {
  const { url } = stage.invented
  const { years } = await act<YearsAnswer>(page.context(), url, 'read-years', {})
  if (years.some(({ frozen }) => frozen !== null)) return
  const year = years.find(({ over }) => over)?.year
  const { body, attachment } = await act<PreparedReport>(page.context(), url, 'prepare-report', { year })
  const subject = { kind: 'clinic' } as const
  const [frozen] = await writeNow(stage.invented, page, 'clinic', [
    {
      kind: 'report-frozen',
      subject,
      body: { ...body, decided: ['Every ear is asked after at twelve months.'] },
      attachments: [attachment],
    },
  ])
  const erratum = { ...reportErratum.example, report: frozen?.id ?? '', year: body.year, readUntil: body.readUntil }
  await writeNow(stage.invented, page, 'clinic', [
    { kind: 'report-erratum', subject, body: { ...erratum, entries: [] } },
  ])
}

/** What came by mail, as somebody copied it. */
async function pasteResult(page: Page, url: string, text: string): Promise<void> {
  await open(page, `${url}/tray/result`)
  await page.getByLabel('Or paste the table or the message').fill(text)
  await page.getByRole('button', { name: 'Read what was pasted' }).click()
}

async function keep(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Keep/ }).last().click()
  await page.locator('[aria-invalid="true"]').first().waitFor()
}

/** Forms that were refused, and what is answered before they can be kept. */
export const forms: readonly State[] = [
  {
    name: 'write-refused',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/case/teasel/write/baseline`)
      await keep(page)
    },
  },
  {
    name: 'summary-unread',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/case/fennel/write/operation-summary?operation=operation-fennel`)
      await page.getByRole('button', { name: /^I have read it: Side/ }).click()
      await page.getByRole('button', { name: /^Keep/ }).last().click()
      await page.getByText(/^Nothing drafted is signed unread/).waitFor()
    },
  },
  {
    name: 'write-pair-refused',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/case/teasel/write/ear-findings?side=BOTH`)
      for (const side of ['LEFT', 'RIGHT'])
        await page
          .getByRole('region', { name: side })
          .or(page.getByRole('group', { name: side }))
          .first()
          .getByRole('radio')
          .first()
          .check()
      await keep(page)
    },
  },
  {
    name: 'correct-refused',
    seat: 'surgeon',
    bring: async (page, url, stage) => {
      await open(page, `${url}/case/barley/write/weight?amend=${await weightOfBarley(page, stage)}`)
      await page.getByLabel('Weight with its unit').fill('14,4')
      await keep(page)
    },
  },
  {
    name: 'withdraw-refused',
    seat: 'surgeon',
    bring: async (page, url, stage) => {
      await open(page, `${url}/case/barley/entry/${await weightOfBarley(page, stage)}/withdraw`)
      await page.locator('button[type=submit]').click()
      await page
        .getByText(/^Say why/)
        .first()
        .waitFor()
    },
  },
  {
    name: 'refile',
    seat: 'surgeon',
    bring: async (page, url, stage) =>
      open(page, `${url}/case/barley/entry/${await weightOfBarley(page, stage)}/refile`),
  },
  {
    name: 'conflict',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/case/barley`)
      await page.getByRole('link', { name: 'Settle: Weight' }).first().click()
      await page.getByRole('heading', { level: 1 }).filter({ hasText: 'Weight' }).waitFor()
      await page.getByRole('button', { name: 'Settle it so' }).click()
    },
  },
  {
    name: 'history',
    seat: 'surgeon',
    printed: true,
    bring: async (page, url, stage) => open(page, `${url}/case/barley/entry/${await weightOfBarley(page, stage)}`),
  },
  {
    name: 'new-referral-match',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/new`)
      await page.getByLabel('Chip').fill('000000000001710')
      await page.getByLabel('Born').fill('03/04/2019')
      await page.getByLabel('What is wrong, in their words').focus()
      await page.getByText('the same chip but for two digits that changed places').waitFor()
    },
  },
  {
    name: 'find-nothing',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/find`)
      await page.getByLabel('Name, chip, owner or phone').fill('zebra')
      await page.getByText('Nothing fits').waitFor()
    },
  },
  {
    name: 'take-in-result-asks',
    seat: 'surgeon',
    bring: async (page, url) => {
      await pasteResult(
        page,
        url,
        'animal;owner;side;organism;drug;value\nTansy;Okafor;left;S. pseudintermedius;Marb X;0,5',
      )
      await page.getByText('Before it can be filed').waitFor()
    },
    leave: (page) => page.getByRole('button', { name: 'Begin anew' }).click(),
  },
  {
    name: 'take-in-result-refused',
    seat: 'surgeon',
    bring: async (page, url) => {
      await pasteResult(page, url, 'MSH|^~\\&|LIS|Northfold Laboratory|||20260304||ORU^R01|1|P|2.8\rOBR|1|B-1')
      await page.getByText(/The message is of version/).waitFor()
    },
    leave: (page) => page.getByRole('button', { name: 'Begin anew' }).click(),
  },
  {
    name: 'tray-taking-in',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/tray`)
      await page.getByLabel('Choose files').setInputFiles([
        { name: 'culture.png', mimeType: 'image/png', buffer: readFileSync(photograph) },
        { name: 'IMG_1.HEIC', mimeType: 'image/heic', buffer: Buffer.from('\0\0\0\u0018ftypheic\0\0\0\0') },
      ])
      await page.getByText('IMG_1.HEIC was not taken in').waitFor()
    },
  },
  {
    name: 'tray-waiting',
    seat: 'surgeon',
    bring: async (page) => {
      await page.getByLabel('by post').check()
      await page.getByLabel('From whom').fill('Northfold Laboratory')
      await page.getByRole('button', { name: 'Put it in the tray' }).click()
      await page.getByRole('button', { name: 'File it' }).first().waitFor()
    },
  },
]

/** A declared emergency: the form refused, what it lifts in the plan, and what it owes. Each begins where the one before ended. */
export const emergencies: readonly State[] = [
  {
    name: 'emergency-form',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/case/juniper/write/medicine-before`)
      const form = new EntryForm(page)
      await form.choose('What it is about', 'the animal')
      await form.type('As written on the box or letter', 'Prednisolone 5 mg tablets')
      await page.getByLabel(/^Active substance/).selectOption({ label: 'prednisolone' })
      await form.choose('How it was given', 'by mouth')
      await form.choose('Is it still given?', 'yes')
      await form.choose('What it did', 'better')
      await form.keep()
      await open(page, `${url}/case/juniper/doses/operation-juniper`)
      await page.getByRole('link', { name: 'Declare an emergency' }).click()
      await keep(page)
    },
  },
  {
    name: 'emergency-plan',
    seat: 'surgeon',
    bring: async (page, url) => {
      await page.getByLabel('Why it is an emergency').fill('She bleeds into the throat and cannot wait.')
      await new EntryForm(page).keep()
      await open(page, `${url}/case/juniper/doses/operation-juniper`)
      await page
        .getByText(/Lifted by the emergency declared by/)
        .first()
        .waitFor()
    },
  },
  {
    name: 'emergency-owed',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, url)
      await page.getByRole('link', { name: 'A second name for the declared emergency' }).waitFor()
    },
  },
]

/** Pages with something open over them. */
export const dialogs: readonly State[] = [
  {
    name: 'dialog-file-it',
    seat: 'surgeon',
    bring: async (page) => {
      await page.getByRole('button', { name: 'File it' }).first().click()
      const dialog = page.getByRole('dialog')
      await dialog.getByLabel('Animal, chip, owner or phone').fill('tans')
      await dialog.getByLabel(/Tansy, dog/).check()
      await dialog.getByRole('group', { name: 'Which ear does it belong to?' }).getByLabel('RIGHT').check()
      await dialog.getByRole('group', { name: 'Which side does it name itself?' }).getByLabel('LEFT').check()
    },
  },
  {
    name: 'new-referral-operated-ear',
    seat: 'desk',
    bring: async (page, url) => {
      await open(page, `${url}/new`)
      await page.getByLabel('What is wrong, in their words').fill('A hole below the ear that weeps.')
      await page.getByLabel('Chip').fill('000000000001710')
      await page.getByRole('radio', { name: /^LEFT ear of Tansy/ }).check()
    },
  },
  {
    name: 'results-approve',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/results`)
      await page.getByRole('button', { name: 'Approve these counts for owners' }).first().click()
      await page.getByRole('button', { name: 'Leave as it is' }).click()
    },
  },
  {
    name: 'results-years-freeze',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/results/years`)
      await page
        .getByRole('button', { name: /^Freeze 20/ })
        .first()
        .click()
      await page.getByRole('dialog').getByLabel('Count what was seen up to').fill('2020-01-01')
    },
  },
  {
    name: 'results-years-erratum',
    seat: 'surgeon',
    bring: async (page, url, stage) => {
      await frozenWithErratum(page, stage)
      await open(page, `${url}/results/years`)
      await page.getByRole('heading', { name: 'Errata' }).first().waitFor()
    },
  },
  {
    name: 'dialog-why',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/case/juniper`)
      await page.getByRole('button', { name: /^Why/ }).first().click()
      await page.getByRole('dialog').waitFor()
    },
  },
  {
    name: 'dialog-shelf-refused',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/settings/shelf`)
      await page.getByRole('button', { name: /^Add/ }).first().click()
      await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click()
      await page.getByRole('dialog').locator('[aria-invalid="true"]').first().waitFor()
    },
  },
  {
    name: 'dialog-register-amend-refused',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/settings/register/of/register%3Amethadone%7C10%20mg%2FmL%7Cinjection`)
      await page
        .getByRole('button', { name: /^Amend received/ })
        .first()
        .click()
      await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click()
      await page.getByRole('dialog').locator('[aria-invalid="true"]').first().waitFor()
    },
  },
  {
    name: 'dialog-take-over',
    seat: 'shared',
    bring: async (page, url) => {
      await open(page, url)
      await page.getByRole('button', { name: 'Change person' }).click()
      await page.getByRole('button', { name: `${nurse.name}, nurse` }).click()
      await page.getByLabel(`PIN of ${nurse.name}`).fill('1111')
      await page.getByRole('button', { name: 'Take over' }).click()
      await page.getByText('That is not the PIN').waitFor()
    },
  },
  {
    name: 'menu-open',
    seat: 'shared',
    bring: async (page, url) => {
      await page.setViewportSize({ width: 390, height: 844 })
      await open(page, url)
      await page.getByRole('button', { name: 'Menu' }).click()
    },
  },
]
