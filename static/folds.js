// Folded parts: left as the reader left them when a part of the page is swapped, and unfolded on paper.

/** By what a folded part is known again: its id, else the words that stay in sight. */
const nameOf = (part) => part.id || part.querySelector('summary')?.textContent
const folds = (place) => [...place.querySelectorAll('details')]

let left = new Map()
document.addEventListener('htmx:before:swap', () => {
  left = new Map(folds(document).map((part) => [nameOf(part), part.open]))
})
document.addEventListener('htmx:after:swap', () => {
  for (const part of folds(document)) part.open = left.get(nameOf(part)) ?? part.open
})

// only for browsers whose style sheets cannot unfold
if (!CSS.supports('selector(::details-content)')) {
  let folded = []
  addEventListener('beforeprint', () => {
    folded = folds(document).filter((part) => !part.open)
    for (const part of folded) part.open = true
  })
  addEventListener('afterprint', () => {
    for (const part of folded) part.open = false
  })
}
