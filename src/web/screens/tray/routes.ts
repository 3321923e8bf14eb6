import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const TrayScreen = lazyPart(async () => ({ default: (await import('./screen.tsx')).TrayScreen }))

export const trayRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [['/tray', TrayScreen]]
