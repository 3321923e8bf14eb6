import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const TrayScreen = lazyPart(async () => ({ default: (await import('./screen.tsx')).TrayScreen }))
const TakeInResultScreen = lazyPart(async () => ({
  default: (await import('./result/screen.tsx')).TakeInResultScreen,
}))

export const trayRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/tray', TrayScreen],
  ['/tray/result', TakeInResultScreen],
]
