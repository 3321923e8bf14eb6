import { type ComponentType, lazy } from 'react'

const TrayScreen = lazy(async () => ({ default: (await import('./screen.tsx')).TrayScreen }))

export const trayRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [['/tray', TrayScreen]]
