/** What the pages of an owner are added to with. */
export const part = (id) => document.getElementById(id)

export function element(name, kind = '') {
  const made = document.createElement(name)
  if (kind !== '') made.className = kind
  return made
}

export function button(text, act) {
  const made = element('button', 'plain')
  made.type = 'button'
  made.textContent = text
  made.addEventListener('click', () => void act())
  return made
}
