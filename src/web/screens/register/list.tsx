import { Link } from 'wouter'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { sayIn, sayRegister } from '#documents/case/say-register.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { registers } from '../../journal/cases.ts'
import { registerHref } from '../../journal/hrefs.ts'
import { SettingsPage } from '../settings/frame.tsx'
import { LocalLaw } from './local-law.tsx'
import { useHouseRegisters } from './use-house-registers.ts'

/** Every register of the house, with its balance and what is to be settled. */
export function RegistersScreen() {
  const { reading, house } = useHouseRegisters()
  const unclear =
    house?.live('shelf-item').filter(({ body }) => body.controlled === 'yes' && body.strength === null) ?? []
  return (
    <SettingsPage part="register">
      <LocalLaw />
      <ReadingView reading={reading} again={() => void registers.refresh()}>
        {(all) =>
          all.length === 0 ? (
            <p>{words.none}</p>
          ) : (
            <ul className="bare stack">
              {all.map((register) => {
                const open = register.findings.filter(({ level }) => level !== 'note').length
                return (
                  <li key={register.stream}>
                    <p>
                      <Link href={registerHref(register.stream)}>{capital(sayRegister(register))}</Link>
                    </p>
                    <p>{fill(words.balance, { balance: sayIn(register.balance, register) })}</p>
                    {open > 0 && (
                      <p>
                        <strong>{sayCount(words.open, open)}</strong>
                      </p>
                    )}
                  </li>
                )
              })}
            </ul>
          )
        }
      </ReadingView>
      {unclear.length > 0 && (
        <p>
          <strong>{fill(words.noStrength, { labels: unclear.map(({ body }) => body.label).join(', ') })}</strong>
        </p>
      )}
      <p>
        <Link href="/settings/shelf">{words.toShelf}</Link>
      </p>
    </SettingsPage>
  )
}
