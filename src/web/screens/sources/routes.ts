import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const breakpoints = lazyPart(async () => ({ default: (await import('./breakpoints.tsx')).BreakpointsScreen }))
const drug = lazyPart(async () => ({ default: (await import('./drug.tsx')).DrugScreen }))
const edition = lazyPart(async () => ({ default: (await import('./edition.tsx')).EditionScreen }))
const formulary = lazyPart(async () => ({ default: (await import('./formulary.tsx')).FormularyScreen }))
const home = lazyPart(async () => ({ default: (await import('./home.tsx')).SourcesScreen }))
const policies = lazyPart(async () => ({ default: (await import('./policies.tsx')).PoliciesScreen }))
const procedure = lazyPart(async () => ({ default: (await import('./procedure.tsx')).ProcedureScreen }))
const procedures = lazyPart(async () => ({ default: (await import('./procedures.tsx')).ProceduresScreen }))
const protocol = lazyPart(async () => ({ default: (await import('./protocol.tsx')).ProtocolScreen }))
const protocols = lazyPart(async () => ({ default: (await import('./protocols.tsx')).ProtocolsScreen }))
const reference = lazyPart(async () => ({ default: (await import('./reference.tsx')).ReferenceScreen }))
const references = lazyPart(async () => ({ default: (await import('./references.tsx')).ReferencesScreen }))
const studies = lazyPart(async () => ({ default: (await import('./studies.tsx')).StudiesScreen }))
const study = lazyPart(async () => ({ default: (await import('./study.tsx')).StudyScreen }))

/** The pages of the sources; all of the content they show is loaded with the first of them. */
export const sourcesRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/sources', home],
  ['/sources/breakpoints', breakpoints],
  ['/sources/breakpoints/:edition', edition],
  ['/sources/formulary', formulary],
  ['/sources/formulary/:drug', drug],
  ['/sources/policies', policies],
  ['/sources/procedures', procedures],
  ['/sources/procedures/:procedure', procedure],
  ['/sources/protocols', protocols],
  ['/sources/protocols/:protocol', protocol],
  ['/sources/reference', references],
  ['/sources/reference/:id', reference],
  ['/sources/studies', studies],
  ['/sources/studies/:study', study],
]
