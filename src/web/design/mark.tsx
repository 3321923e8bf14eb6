/** The sign of the product: the bend of a canal and the quiet round at its end. */
export function Mark() {
  return (
    <svg viewBox="0 0 32 32" width="34" height="34" aria-hidden="true" focusable="false">
      <path d="M9 5v12a7 7 0 0 0 7 7h5" fill="none" stroke="currentColor" strokeWidth="3.4" strokeLinecap="round" />
      <circle cx="24.5" cy="24" r="3.4" fill="none" stroke="currentColor" strokeWidth="2" />
    </svg>
  )
}
