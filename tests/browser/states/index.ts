import { culture } from './culture.ts'
import { doors, lines } from './doors-and-lines.ts'
import { dialogs, emergencies, forms } from './forms-and-dialogs.ts'
import { agreements, ownerPages, vetForms } from './owner-and-agreement.ts'
import { lists, screens } from './screens.ts'
import { at, type State } from './state.ts'

/** Screens that somebody carries away on paper. */
const printed =
  /^(ward$|ward-round$|owed|theatre-list|case-|choice|agreement|results|plate|formulary$|study|procedure|protocol|publication|settings-plan$|settings-register-one)/

const ofScreens = screens.map(([name, path]) => at('surgeon', name, path, printed.test(name)))
const half = Math.ceil(ofScreens.length / 2)
const empty = ofScreens
  .filter(({ name }) => lists.some((one) => one === name))
  .map((list): State => ({ ...list, name: `${list.name}-empty`, seat: 'empty' }))

/** `STATES=owed,kept` leaves only those that begin so. A state that begins where another ended needs that one too. */
const wanted = (process.env.STATES ?? '').split(',')
const chosen = (all: readonly State[]) => all.filter(({ name }) => wanted.some((one) => name.startsWith(one)))

/**
 * Every screen, then every screen in a state of its own. Within a group their order matters: some begin where the one
 * before ended.
 */
export const groups: readonly (readonly [name: string, states: readonly State[]])[] = [
  ['the screens of a case', chosen(ofScreens.slice(0, half))],
  ['the other screens', chosen(ofScreens.slice(half))],
  ['forms that were refused, and dialogs', chosen([...forms, ...dialogs, ...emergencies])],
  ['reports of a laboratory', chosen(culture)],
  ['an agreement, and the page of the owner', chosen([...agreements, ...ownerPages])],
  ['the short form of a referring practice', chosen([...vetForms])],
  ['before signing in, what a role may not, and a clinic without a case', chosen([...doors, ...empty])],
  ['without the server, with a slow one, and with one that fails', chosen(lines)],
]
