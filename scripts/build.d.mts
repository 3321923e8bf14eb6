export function isBuilt(): boolean
export function build(): Promise<void>
/** Copies the parts of the former build that the next one does not have. */
export function keepFormer(former: string, next: string): void
