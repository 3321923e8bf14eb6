import { type ComponentType, lazy } from 'react'

const TheatreListScreen = lazy(async () => ({ default: (await import('./screen.tsx')).TheatreListScreen }))

export const theatreRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/theatre', TheatreListScreen],
]
