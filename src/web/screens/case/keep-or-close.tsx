/** The end of a part that opens beside what it is about: keep what was typed, or close it and keep nothing. */
export function KeepOrClose(props: { readonly keep: string; readonly close: string; readonly onClose: () => void }) {
  const { keep, close, onClose } = props
  return (
    <p className="row">
      <button type="submit" data-weight="main">
        {keep}
      </button>
      <button type="button" data-weight="quiet" onClick={onClose}>
        {close}
      </button>
    </p>
  )
}
