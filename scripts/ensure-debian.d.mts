export function ensureDebian(names: readonly string[]): void
