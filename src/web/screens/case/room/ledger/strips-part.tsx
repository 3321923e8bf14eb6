import { useMemo, useRef } from 'react'
import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { inks } from '#core/plate/theme.ts'
import { drawStrips } from '#core/theatre/draw-strips.ts'
import type { Ledger } from '#core/theatre/ledger.ts'
import { stripsOf } from '#core/theatre/strips.ts'
import { nameOfStrip, sayStrips, stripEvents } from '#documents/anaesthetic-record/strips.ts'
import { silent, svgElement } from '../../../../plate/svg-element.tsx'
import { useTheme } from '../../../../plate/use-theme.ts'
import { useWidth } from '../../../../plate/use-width.ts'
import { useCaseView } from '../../case-view.ts'
import styles from './ledger.module.css'

const ours = { ink: 'var(--ink)', quiet: 'var(--ink-soft)', accent: 'var(--accent)' } as const

/** One strip for each variable, on one axis of time. The ledger below says the same in words. */
export function StripsPart({ ledger }: { readonly ledger: Ledger }) {
  const { file } = useCaseView()
  const { zone } = file.clinic
  const box = useRef<HTMLDivElement>(null)
  const { width, words: larger } = useWidth(box)
  // Where a person chose the colours of the whole machine, only they are used.
  const colours = useTheme() === 'forced' ? inks.forced : ours
  const strips = useMemo(() => stripsOf(ledger.observations, theatreTimers.observeEvery.value), [ledger])
  const drawn = useMemo(() => {
    const look = { width, font: Math.round(15 * larger), colours, zone, nameOf: nameOfStrip }
    return drawStrips(strips, ledger.gaps, stripEvents(ledger), look)
  }, [strips, ledger, colours, width, larger, zone])
  return (
    <section aria-labelledby="strips" className={styles.strips}>
      <h2 id="strips">{words.strips}</h2>
      <div ref={box}>
        {drawn ? (
          <figure className={styles.figure}>
            <svg
              role="img"
              aria-label={sayStrips(strips, zone)}
              width={drawn.width}
              height={drawn.height}
              viewBox={`0 0 ${drawn.width} ${drawn.height}`}
            >
              {svgElement(silent(drawn.nodes), 0)}
            </svg>
            <figcaption>{ledgerInEnglish.stripsCaption}</figcaption>
          </figure>
        ) : (
          <p>{words.noStrips}</p>
        )}
      </div>
    </section>
  )
}
