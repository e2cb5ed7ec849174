// Unfolds everything while the page is being printed, in browsers whose style sheets cannot.
const folded = []
if (!CSS.supports('selector(::details-content)')) {
  addEventListener('beforeprint', () => {
    for (const part of document.querySelectorAll('details:not([open])')) {
      folded.push(part)
      part.open = true
    }
  })
  addEventListener('afterprint', () => {
    for (const part of folded.splice(0)) part.open = false
  })
}
