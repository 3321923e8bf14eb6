/** In the small print of every Spanish paper, until a vet whose first language it is has read all of them. */
export const aboutTheSpanish =
  'La traducción es nuestra; aún no la ha revisado un profesional veterinario de lengua española. Las citas y lo que escribió la clínica van como se escribieron. Pregúntenos lo que no se entienda.'
