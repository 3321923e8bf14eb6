import type { Page } from '@playwright/test'
import { EntryForm, fillWeight } from '../pages/entry-form.ts'
import { at, open, type State } from './state.ts'

/** Before anybody is signed in, and what a role may not do. */
export const doors: readonly State[] = [
  {
    name: 'first-run-refused',
    seat: 'first-run',
    bring: async (page, url) => {
      await open(page, url)
      await page.getByRole('radio', { name: /An empty clinic/ }).check()
      for (const [label, text] of [
        ['One-time code', 'WRONG-CODE-1'],
        ['Name of the clinic', 'Wend Hill'],
        ['Phone of the clinic', '01632 960200'],
        ['Currency', 'GBP'],
        ['Your name', 'Runa Falk'],
        ['Name for signing in', 'runa.falk'],
        ['Password', 'a long word and a longer one'],
      ] as const)
        await page.getByLabel(label, { exact: true }).fill(text)
      await page.getByLabel('Your role').selectOption('surgeon')
      await page.locator('button[type=submit]').click()
      await page.locator('[aria-invalid=true]').waitFor()
    },
  },
  {
    name: 'sign-in-refused',
    seat: 'nobody',
    bring: async (page, url) => {
      await open(page, url)
      await page.getByLabel('Name for signing in').fill('runa.falk')
      await page.getByLabel('Password').fill('not the password of hers')
      await page.getByRole('button', { name: 'Sign in', exact: true }).click()
      await page.locator('[aria-invalid=true]').waitFor()
    },
  },
  at('desk', 'forbidden-write', '/case/tansy/write/ear-findings'),
  at('desk', 'forbidden-read-log', '/settings/read-log'),
  at('desk', 'forbidden-doses', '/settings/doses'),
  at('surgeon', 'no-such-case', '/case/nobody'),
]

/** What this device reads and writes without the server, with a slow one, or with one that fails. */
export const lines: readonly State[] = [
  {
    name: 'reading',
    seat: 'surgeon',
    bring: async (page, url) => {
      await page.route('**/api/actions/read-lists', () => undefined)
      await forgetReadings(page, url)
      await page.goto(url)
      await page.getByText('Reading …').waitFor()
    },
    leave: (page) => page.unrouteAll(),
  },
  {
    name: 'server-fault',
    seat: 'surgeon',
    bring: async (page, url) => {
      await page.route('**/api/actions/read-lists', (route) => route.fulfill({ status: 500, body: '{}' }))
      await forgetReadings(page, url)
      await page.goto(url)
      await page.getByRole('alert').waitFor()
    },
    leave: (page) => page.unrouteAll(),
  },
  {
    name: 'page-fault',
    seat: 'surgeon',
    bring: async (page, url) => {
      await page.route('**/api/actions/list-devices', (route) => route.fulfill({ status: 200, body: '{}' }))
      await page.goto(`${url}/settings/devices`)
      await page.getByText('This page failed').first().waitFor()
    },
    leave: (page) => page.unrouteAll(),
  },
  {
    name: 'owed-behind',
    seat: 'surgeon',
    bring: async (page, url) => {
      // The invented practice is made again faster than a person looks: what the server says of a large one is put in.
      await page.route('**/api/actions/read-lists', async (route) => {
        const response = await route.fetch()
        const lists = (await response.json()) as object
        await route.fulfill({ response, json: { ...lists, remaking: { made: 120, of: 10_000 } } })
      })
      await open(page, url)
      await page.getByText('Being worked out again').waitFor()
    },
    leave: (page) => page.unrouteAll(),
  },
  {
    name: 'owed-offline',
    seat: 'surgeon',
    bring: async (page, url) => {
      await open(page, `${url}/case/tansy`)
      await open(page, url)
      await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
      await page.context().setOffline(true)
      await open(page, url)
      await page.getByText(/^No connection/).waitFor()
    },
  },
  {
    name: 'room-signed-out',
    seat: 'surgeon',
    bring: async (page, url) => {
      await page.context().setOffline(false)
      await open(page, `${url}/case/fennel/room/operation-fennel`)
      // As when the session ended on the server: the sessions of the other states are left alone.
      const error = { code: 'not-signed-in', path: '', message: '' }
      await page.route('**/api/actions/who-am-i', (route) => route.fulfill({ status: 401, json: { error } }))
      await page.reload()
      await page.getByText(/^Signed out on the server/).waitFor()
    },
    leave: async (page) => {
      await page.unrouteAll()
      await page.context().setOffline(true)
    },
  },
  {
    name: 'case-offline',
    seat: 'surgeon',
    bring: async (page, url) => {
      const form = await EntryForm.open(page, url, 'tansy/write/weight')
      await fillWeight(form, '18.8 kg')
      await form.keep()
      await page.getByText('only on this device yet').first().waitFor()
    },
  },
  {
    name: 'kept-waiting',
    seat: 'surgeon',
    bring: (page, url) => open(page, `${url}/kept`),
  },
  {
    name: 'kept-refused',
    seat: 'surgeon',
    bring: async (page, url) => {
      await page.evaluate(spoilFirstWaiting)
      // What stands in this page's memory is still good, and would be sent.
      await page.goto('about:blank')
      await page.context().setOffline(false)
      await open(page, `${url}/kept`)
      await page.getByText('Not accepted').first().waitFor()
    },
  },
]

/** As if this device had never read a list; whatever answers for the lists now must stand before, or one is read again. */
async function forgetReadings(page: Page, url: string): Promise<void> {
  await open(page, `${url}/nowhere`)
  await page.evaluate(inDatabase(`tx.objectStore('keep').delete('lists')`))
}

/** As another program on this device might have written it: a body condition that the server does not take. */
const spoilFirstWaiting = inDatabase(`
  tx.objectStore('outbox').openCursor().onsuccess = ({ target: { result: cursor } }) =>
    cursor?.update({ ...cursor.value, entry: { ...cursor.value.entry, body: { ...cursor.value.entry.body, bodyCondition: 12 } } })`)

/** What is done in the app's own database on this device. */
function inDatabase(does: string): string {
  return `new Promise((done, failed) => {
    const opening = indexedDB.open('quiet-ear')
    opening.onsuccess = () => {
      const tx = opening.result.transaction(['keep', 'outbox'], 'readwrite')
      ${does}
      tx.oncomplete = () => { opening.result.close(); done(null) }
      tx.onerror = failed
    }
    opening.onerror = failed
  })`
}
