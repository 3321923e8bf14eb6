import { type ComponentType, lazy } from 'react'

/** The pages of one case; they bring the formulary and the procedures and are loaded when a case is opened. */
export const caseRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/case/:id', lazy(() => import('./screen.tsx'))],
  ['/case/:id/write/:kind', lazy(() => import('./write/screen.tsx'))],
]
