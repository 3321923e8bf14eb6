import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { emergencySheetWords } from '#content/wording/papers-emergency.ts'
import type { EmergencySheet } from '#core/dosing/emergency.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayEnergy } from '#documents/emergency-sheet/say-whole.ts'
import styles from './now.module.css'

/** The energy of a shock for this weight. */
export function ShockPart({ sheet }: { readonly sheet: EmergencySheet }) {
  return (
    <section aria-labelledby="shock">
      <h2 id="shock">{words.shock}</h2>
      <ul className="bare">
        {sheet.energy.map((one) => (
          <li key={`${one.placement} ${one.waveform}`} className={styles.from}>
            {fill(words.shockLine, {
              paddles: emergencySheetWords.placements[one.placement],
              waveform: emergencySheetWords.waveforms[one.waveform],
              energy: sayEnergy(one),
            })}
          </li>
        ))}
      </ul>
    </section>
  )
}
