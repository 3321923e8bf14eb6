import { useLists } from '../../../journal/cases.ts'

/** Animals by the names they have in the list of cases. */
export function useNames(): (stream: string) => string {
  const lists = useLists()
  const names = new Map(lists.kind === 'read' ? lists.value.cases.map(({ stream, name }) => [stream, name]) : [])
  return (stream) => names.get(stream) ?? stream
}
