/** The one quiet line under everything that states a dose, a category or a risk, in Spanish. */
export const cautionInSpanish =
  'Apoyo a la decisión para veterinarios con licencia; la etiqueta del producto en la mano, la ley local y el criterio clínico van primero.'
