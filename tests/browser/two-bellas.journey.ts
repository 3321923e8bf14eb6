import type { Page } from '@playwright/test'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { household } from '#core/journal/kinds/household.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { specimen } from '#core/journal/kinds/specimen.ts'
import { expectAccessible } from './accessible.ts'
import { act, entriesOf, expect, openEmpty, type Program, test } from './clinic.ts'

/** A dog called Bella with one tube B-1 taken from her LEFT bulla; her owner and chip are her own. */
async function aBella(program: Program, page: Page, number: number, owner: string): Promise<string> {
  const { url } = program
  const context = page.context()
  const me = await act<{ clinic: { id: string }; active: string }>(context, url, 'who-am-i', {})
  const [stream, animal, house, contact] = ['case:bella-', 'bella-', 'house-', 'contact-'].map(
    (one) => `${one}${number}`,
  )
  if (!stream || !animal || !house || !contact) throw new Error('no names')
  const row = { kind: 'owner', name: owner, practice: null, phone: `01632 96030${number}`, email: null, address: [] }
  await act(context, url, 'put-row', { register: 'contact', id: contact, body: row })
  const every = { clinic: me.clinic.id, stream, author: { kind: 'person', person: me.active } } as const
  const make = entryMaker(every, 0x7100 + number)
  const [contacts] = household.example.contacts
  const entries = [
    make({
      kind: 'household',
      subject: { kind: 'household', household: house },
      body: { ...household.example, contacts: [{ roles: ['owner'], mayConsent: true, ...contacts, contact }] },
    }),
    make({
      kind: 'identity',
      subject: { kind: 'animal', animal },
      body: { ...identity.example, name: 'Bella', chip: `00000000000030${number}`, household: house },
    }),
    make({
      kind: 'specimen',
      subject: { kind: 'ear', animal, side: 'LEFT' },
      body: { ...specimen.example, laboratory: null, operation: null },
    }),
  ]
  await act(context, url, 'accept-entries', { clinic: me.clinic.id, entries })
  return stream
}

/** A culture of a Bella, tube B-1, LEFT; whose Bella only the owner's name says. */
function message(owner: string, accession: string, status: 'F' | 'C' = 'F', value = '<=^0.25'): string {
  const order = (place: number, service: string, parent = '') => {
    const fields = [String(place), 'B-1', accession, service, '', '', '202603011420']
    return [
      'OBR',
      ...fields,
      ...Array<string>(17).fill(''),
      status,
      parent,
      '',
      '',
      parent === '' ? '' : `B-1^${accession}`,
    ].join('|')
  }
  return [
    `MSH|^~\\&|LIS|Larkrise Laboratory|||202603041015||ORU^R01|${accession}|P|2.5.1`,
    `PID|1||||${owner}^Bella`,
    order(1, '634-6^Bacteria identified^LN'),
    `OBX|1|CWE|634-6^Bacteria identified^LN|1|^Staphylococcus pseudintermedius||||||${status}`,
    'SPM|1|B-1||^Bulla|||||L^Left',
    order(2, '29576-6^Susceptibility^LN', '634-6^1'),
    `OBX|1|SN|18908-4^Clindamycin^LN||${value}|mg/L||S|||${status}`,
    '',
  ].join('\r')
}

async function takeIn(page: Page, program: Program, name: string, text: string): Promise<void> {
  await page.goto(`${program.url}/tray/result`)
  const [anew, choose] = [page.getByRole('button', { name: 'Begin anew' }), page.getByLabel('Choose the file')]
  await expect(anew.or(choose)).toBeVisible()
  // What was taken in before stands here until somebody begins anew.
  if (await anew.isVisible()) await anew.click()
  await choose.setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) })
}

const resultsOf = async (program: Program, page: Page, stream: string) =>
  (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'specimen-result')

test('two Bellas on one day: each result finds its own by two things that agree, and one that fits both waits', async ({
  page,
  program,
}) => {
  await openEmpty(program, page, 'Larkrise Referrals')
  const okafor = await aBella(program, page, 1, 'Nuria Okafor')
  const bell = await aBella(program, page, 2, 'Tobias Bell')

  await test.step('a file with both is read at once, and each report names its own Bella', async () => {
    await takeIn(page, program, 'both.hl7', message('Okafor', 'LR-1') + message('Bell', 'LR-2'))
    const first = page.getByRole('region', { name: 'Bella, owner Okafor; LEFT; number LR-1, tube B-1' })
    await expect(
      first.getByText('This is Bella, owner Nuria Okafor. What agrees: name, owner, label of the tube.'),
    ).toBeVisible()
    await expectAccessible(page)
    await first.getByRole('button', { name: 'File to Bella, LEFT' }).click()
    await expect(first.getByText('Filed to Bella, LEFT.')).toBeVisible()
    const second = page.getByRole('region', { name: 'Bella, owner Bell; LEFT; number LR-2, tube B-1' })
    await second.getByRole('button', { name: 'File to Bella, LEFT' }).click()
    await expect(second.getByText('Filed to Bella, LEFT.')).toBeVisible()
    const accessions = async (stream: string) =>
      (await resultsOf(program, page, stream)).map(({ body }) => body.accession)
    await expect.poll(() => accessions(okafor)).toEqual(['LR-1'])
    await expect.poll(() => accessions(bell)).toEqual(['LR-2'])
  })

  await test.step('one that names no owner could be of either: it is not filed and waits in the tray', async () => {
    await takeIn(page, program, 'whose.hl7', message('', 'LR-3'))
    await expect(page.getByText(/It could belong to more than one animal: .*Nuria Okafor.*Tobias Bell/)).toBeVisible()
    await expect(page.getByRole('button', { name: 'File to Bella, LEFT' })).toHaveCount(0)
    await page.getByRole('button', { name: 'Put it in the holding tray' }).click()
    await expect(page.getByText('It waits in the holding tray.', { exact: true })).toBeVisible()
    await page.goto(`${program.url}/tray`)
    await expect(page.getByText(/It says: .*number LR-3/)).toBeVisible()
  })

  await test.step('the same report again is not filed twice; a corrected one takes its place', async () => {
    await takeIn(page, program, 'again.hl7', message('Okafor', 'LR-1'))
    await expect(page.getByText('It stands in the case already, the same in every value.')).toBeVisible()
    await expect(page.getByRole('button', { name: 'File to Bella, LEFT' })).toBeDisabled()
    await takeIn(page, program, 'corrected.hl7', message('Okafor', 'LR-1', 'C', '>^4'))
    await expect(page.getByText('It takes the place of the report under this number (final)')).toBeVisible()
    await page.getByRole('button', { name: 'File to Bella, LEFT' }).click()
    await expect(page.getByText('Filed to Bella, LEFT.')).toBeVisible()
    await expect
      .poll(async () =>
        (await resultsOf(program, page, okafor)).map(({ body, header }) => [body.status, header.supersedes.length]),
      )
      .toEqual([
        ['final', 0],
        ['corrected', 1],
      ])
  })

  await test.step('a number that stands with one Bella is not filed to the other', async () => {
    await takeIn(page, program, 'other.hl7', message('Okafor', 'LR-2'))
    await expect(page.getByText('Results under this number stand with Bella already.')).toBeVisible()
    await expect(page.getByRole('button', { name: 'File to Bella, LEFT' })).toHaveCount(0)
  })

  await test.step('a message with a category in the wrong field says where, and nothing of it is taken', async () => {
    const broken = message('Bell', 'LR-4').replace('|mg/L||S|||', '|mg/L|||S|||')
    await takeIn(page, program, 'broken.hl7', broken)
    await expect(page.getByText('Line 7, OBX-9. Nothing of it was taken.')).toBeVisible()
    expect(await resultsOf(program, page, bell)).toHaveLength(1)
  })

  await test.step('a wrong filing taken back leaves the case and waits in the tray again, with the original', async () => {
    await page.goto(`${program.url}/tray`)
    await page.getByRole('button', { name: 'Take it back to the tray Bella' }).first().click()
    await page.getByLabel('Why').fill('It was of another Bella.')
    await page.getByRole('button', { name: 'Take it back', exact: true }).click()
    await expect(page.getByText(/It says: .*number LR-1/)).toBeVisible()
    const kinds = async () => (await entriesOf(program, page, okafor)).map(({ header }) => header.kind)
    await expect.poll(kinds).toContain('withdrawal')
    const waiting = page.getByRole('listitem').filter({ hasText: 'number LR-1' })
    await waiting.getByRole('link', { name: 'Read it as a result' }).click()
    await page.getByRole('button', { name: 'File to Bella, LEFT' }).click()
    await expect(page.getByText('Filed to Bella, LEFT.')).toBeVisible()
    await page.goto(`${program.url}/tray`)
    await expect(page.getByText(/It says: .*number LR-3/)).toBeVisible()
    await expect(waiting).toHaveCount(0)
  })
})
