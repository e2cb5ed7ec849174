// Gives every step its form, its buttons and its limits, which the page holds once: eighty steps stay a short page. It comes
// before keep.js, which looks for forms.
{
  const unread = { unit: null, low: null, high: null, stopIf: null, before: null }

  const set = (part, attributes) => {
    for (const [name, value] of Object.entries(attributes)) part.setAttribute(name, value)
  }

  const furnish = (step, previous, next) => {
    const { key, number } = step.dataset
    const { unit, power } = step.limits
    const job = `/jobs/${document.querySelector('#bench').dataset.job}`
    const addressOf = (wanted) => `${job}/bench?step=${encodeURIComponent(wanted)}`
    const copy = document.querySelector(unit ? '#measured' : '#seen').content.cloneNode(true)
    const find = (selector) => copy.querySelector(selector)
    const form = find('form')
    set(form, { id: `form-${key}`, action: addressOf(key) })
    const box = form.querySelector('[name=value], [name=words]')
    box.id = `${box.name}-${key}`
    set(form.querySelector('label'), { for: box.id })
    for (const each of unit ? judge.unitsShown(unit) : [])
      box.parentElement.append(
        Object.assign(document.createElement('button'), {
          type: 'submit',
          name: 'unit',
          value: each,
          textContent: each,
        }),
      )
    if (unit) {
      set(find('.actions [name=as]'), { form: form.id })
      set(find('[data-despite]'), { href: `${addressOf(key)}&despite=yes` })
    } else if (power === 'none') find('.timers').remove()
    set(find('.actions'), { 'aria-label': `Steps beside ${number}` })
    for (const [rel, beside] of Object.entries({ prev: previous, next })) {
      const link = find(`[rel=${rel}]`)
      if (beside) set(link, { href: addressOf(beside.dataset.key), 'data-to': beside.dataset.key })
      else link.remove()
    }
    const last = step.querySelector('.last')
    const undo = find('.last')
    if (last) {
      const taken = undo.querySelector('form')
      set(taken, { action: `${job}/entries/${last.dataset.id}/withdraw` })
      last.append(taken)
      undo.replaceWith(last)
    } else undo.remove()
    step.querySelector('.limits').after(copy)
  }

  const furnishAll = () => {
    const rows = document.querySelector('#limits')
    if (!rows) return
    const limits = JSON.parse(rows.textContent)
    const steps = [...document.querySelectorAll('#bench .step')]
    for (const [at, step] of steps.entries()) {
      const { key, number } = step.dataset
      step.limits = { ...unread, ...limits[key], key, text: number }
      if (!step.querySelector('.actions')) furnish(step, steps[at - 1], steps[at + 1])
    }
  }

  furnishAll()
  document.addEventListener('placed', furnishAll)
}
