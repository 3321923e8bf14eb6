import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

/** The pages of one case; they bring the formulary and the procedures and are loaded when a case is opened. */
export const caseRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/case/:id', lazyPart(() => import('./screen.tsx'))],
  ['/case/:id/agreement', lazyPart(() => import('./agreement/screen.tsx'))],
  ['/case/:id/choice', lazyPart(() => import('./choice/screen.tsx'))],
  ['/case/:id/conflict/:entry', lazyPart(() => import('./conflict/screen.tsx'))],
  ['/case/:id/contact/:contact', lazyPart(() => import('./contacts/change.tsx'))],
  ['/case/:id/contacts', lazyPart(() => import('./contacts/screen.tsx'))],
  ['/case/:id/contacts/:part', lazyPart(() => import('./contacts/add.tsx'))],
  ['/case/:id/entry/:entry', lazyPart(() => import('./history/screen.tsx'))],
  ['/case/:id/entry/:entry/refile', lazyPart(() => import('./history/refile.tsx'))],
  ['/case/:id/entry/:entry/withdraw', lazyPart(() => import('./history/withdraw.tsx'))],
  ['/case/:id/doses/:operation', lazyPart(() => import('./dose-plan/screen.tsx'))],
  ['/case/:id/doses/:operation/line', lazyPart(() => import('./dose-plan/editor.tsx'))],
  ['/case/:id/join', lazyPart(() => import('./join/screen.tsx'))],
  ['/case/:id/plan/:operation', lazyPart(() => import('./plan/screen.tsx'))],
  ['/case/:id/plate/:side', lazyPart(() => import('./plate/screen.tsx'))],
  ['/case/:id/room/:operation', lazyPart(() => import('./room/screen.tsx'))],
  ['/case/:id/room/:operation/pause/:pause', lazyPart(() => import('./room/pause/screen.tsx'))],
  ['/case/:id/room/:operation/paper', lazyPart(() => import('./room/paper/screen.tsx'))],
  ['/case/:id/room/:operation/ledger', lazyPart(() => import('./room/ledger/screen.tsx'))],
  ['/case/:id/room/:operation/now', lazyPart(() => import('./room/now/list.tsx'))],
  ['/case/:id/room/:operation/now/:call', lazyPart(() => import('./room/now/screen.tsx'))],
  ['/case/:id/room/:operation/specimens', lazyPart(() => import('./room/specimens/screen.tsx'))],
  ['/case/:id/room/:operation/incident', lazyPart(() => import('./room/incident/screen.tsx'))],
  ['/case/:id/room/:operation/told', lazyPart(() => import('./room/told/screen.tsx'))],
  ['/case/:id/ward', lazyPart(() => import('./ward/screen.tsx'))],
  ['/case/:id/write/:kind', lazyPart(() => import('./write/screen.tsx'))],
]
