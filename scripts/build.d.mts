export function isBuilt(): boolean
export function build(): Promise<void>
