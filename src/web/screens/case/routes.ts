import { type ComponentType, lazy } from 'react'

/** The pages of one case; they bring the formulary and the procedures and are loaded when a case is opened. */
export const caseRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/case/:id', lazy(() => import('./screen.tsx'))],
  ['/case/:id/conflict/:entry', lazy(() => import('./conflict/screen.tsx'))],
  ['/case/:id/entry/:entry', lazy(() => import('./history/screen.tsx'))],
  ['/case/:id/entry/:entry/refile', lazy(() => import('./history/refile.tsx'))],
  ['/case/:id/entry/:entry/withdraw', lazy(() => import('./history/withdraw.tsx'))],
  ['/case/:id/plate/:side', lazy(() => import('./plate/screen.tsx'))],
  ['/case/:id/write/:kind', lazy(() => import('./write/screen.tsx'))],
]
