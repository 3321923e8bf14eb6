/**
 * The head of a table: one row of column heads.
 *
 * @example <ColumnHeads of={['Drug', 'Printed']} />
 */
export function ColumnHeads({ of }: { readonly of: readonly string[] }) {
  return (
    <thead>
      <tr>
        {of.map((head) => (
          <th key={head} scope="col">
            {head}
          </th>
        ))}
      </tr>
    </thead>
  )
}
