import { useParams } from 'wouter'
import { ownEditions } from '#core/culture/house-facts.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { decoded } from '../settings/house-lines.ts'
import { EditionPage } from './edition-page.tsx'
import { NoSuchPage } from './frame.tsx'
import { allEditions } from './library.ts'

/** The page of the edition in the address: one of ours, or a copy of this clinic. */
export function EditionScreen() {
  const { edition = '' } = useParams<{ edition: string }>()
  const id = decoded(edition)
  const ours = allEditions.find((one) => one.id === id)
  return ours ? <EditionPage edition={ours} /> : <OwnEdition id={id} />
}

/** A copy of this clinic, which only its own journal holds. */
function OwnEdition({ id }: { readonly id: string }) {
  const reading = useHouse()
  return (
    <ReadingView reading={reading}>
      {({ file }) => {
        const own = ownEditions(file).find((one) => one.id === id)
        return own ? <EditionPage edition={own} /> : <NoSuchPage part="breakpoints" />
      }}
    </ReadingView>
  )
}
