import type { FieldWords } from '#core/forms/words.ts'
import { dividesInEnglish } from './app-formulary.ts'
import { howInEnglish as words } from './app-how.ts'

const { labels, helps } = words

/** The words of the fields of "how it is given", which stand in the plan of an operation and in the usual plans. */
export const howFields: Readonly<Record<string, FieldWords>> = {
  '': { label: words.legend, open: words.open },
  formulation: { label: words.formulation },
  over: { label: labels.over },
  container: { label: labels.runsFrom, open: words.addContainer },
  'container.kind': { label: words.kind, options: words.runsFrom },
  'container.name': { label: labels.container },
  'container.volume': { label: labels.volume },
  'container.rate': { label: labels.rate, help: helps.rate },
  'container.ownVolume': { label: labels.ownVolume, none: words.ownVolumeUnsaid, options: words.ownVolume },
  'container.fluid': { label: labels.fluid, none: words.unsaid, options: words.fluids },
  loading: { label: labels.loading, open: words.addLoading },
  'loading.dose': { label: words.loadingDose, help: helps.loading },
  'loading.over': { label: labels.loadingOver },
  tablet: { label: words.tablet, open: words.addTablet },
  'tablet.strength': { label: words.tabletStrength },
  'tablet.divides': { label: words.divides, none: words.dividesUnsaid, options: dividesInEnglish },
  set: { label: labels.set },
  mixed: { label: words.mixedHow, open: words.addMixed },
  'mixed.from': { label: labels.mixedFrom },
  'mixed.product': { label: labels.mixedProduct },
  'mixed.final': { label: labels.mixedFinal },
  'tablet.rounds': { label: words.rounds, none: words.roundsUnread, options: words.roundsWords },
  every: { label: labels.every },
  days: { label: labels.days },
  mark: { label: labels.mark },
  xylitolFree: { label: words.xylitolFree, none: words.xylitolUnread },
}
