import { useState } from 'react'
import { caseLinksInEnglish as words } from '#content/wording/app-case-links.ts'
import { fill } from '#core/outcome/finding.ts'
import { call } from '../../journal/api.ts'
import { useAction } from '../../journal/cases.ts'
import { useDoing } from '../settings/doing.tsx'
import { useCaseView } from './case-view.ts'
import type { MadeLink } from './link-address.tsx'

/** The private links of the case on this page for owners or for practices: read, made and ended with the server. */
export function useCaseLinks<Answer>(whose: 'owner' | 'vet') {
  const { file } = useCaseView()
  const reading = useAction<Answer>(`list-${whose}-links`, { stream: file.stream })
  const [made, setMade] = useState<MadeLink | null>(null)
  const { doing, run, working } = useDoing()
  /** The link that was made; null when the server made none, and then it is said why. */
  const make = async (name: string, asked: Readonly<Record<string, unknown>>): Promise<MadeLink | null> => {
    let link: MadeLink | null = null
    await run(async () => {
      link = { ...(await call<Omit<MadeLink, 'name'>>(`make-${whose}-link`, { stream: file.stream, ...asked })), name }
      setMade(link)
      reading.again()
      return ''
    })
    return link
  }
  const end = ({ id }: { readonly id: string }, name: string) =>
    run(async () => {
      await call(`revoke-${whose}-link`, { link: id })
      if (made?.id === id) setMade(null)
      reading.again()
      return fill(words.endDone, { name })
    })
  return { reading, made, doing, working, make, end }
}
