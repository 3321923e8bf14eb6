import { breakpointsInEnglish as words } from '#content/wording/app-breakpoints.ts'

/** That the values of the tool were not read in the documents themselves. */
export function SecondHand() {
  return (
    <p role="note">
      <strong>{words.warning}</strong>
    </p>
  )
}
