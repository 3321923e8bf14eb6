export function buildEntry(entry: string, name: string): Promise<string>
