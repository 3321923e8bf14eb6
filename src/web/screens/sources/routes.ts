import { type ComponentType, lazy } from 'react'

const drug = lazy(async () => ({ default: (await import('./drug.tsx')).DrugScreen }))
const formulary = lazy(async () => ({ default: (await import('./formulary.tsx')).FormularyScreen }))
const home = lazy(async () => ({ default: (await import('./home.tsx')).SourcesScreen }))
const policies = lazy(async () => ({ default: (await import('./policies.tsx')).PoliciesScreen }))
const procedure = lazy(async () => ({ default: (await import('./procedure.tsx')).ProcedureScreen }))
const procedures = lazy(async () => ({ default: (await import('./procedures.tsx')).ProceduresScreen }))
const protocol = lazy(async () => ({ default: (await import('./protocol.tsx')).ProtocolScreen }))
const protocols = lazy(async () => ({ default: (await import('./protocols.tsx')).ProtocolsScreen }))
const reference = lazy(async () => ({ default: (await import('./reference.tsx')).ReferenceScreen }))
const references = lazy(async () => ({ default: (await import('./references.tsx')).ReferencesScreen }))
const studies = lazy(async () => ({ default: (await import('./studies.tsx')).StudiesScreen }))
const study = lazy(async () => ({ default: (await import('./study.tsx')).StudyScreen }))

/** The pages of the sources; all of the content they show is loaded with the first of them. */
export const sourcesRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/sources', home],
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
