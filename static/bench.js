// One step a screen: judges what is typed by the functions of the server (judge.js), moves on, and fills the screen with a
// stop, with the network or without it. What waits is kept and sent by keep.js.
{
  const read = (key) => JSON.parse(localStorage.getItem(key))
  const bench = () => document.querySelector('#bench')
  const steps = () => [...document.querySelectorAll('#bench .step')]
  const stepOf = (key) => steps().find((step) => step.dataset.key === key)
  const stepNumbered = (number) => steps().find((step) => step.dataset.number === number)
  const shown = () => steps().find((step) => !step.hidden)

  /** what the server has and this page does not show yet, since something was being typed as the answer came */
  let taken = []

  /** what was typed here for this job and this page does not have yet, the oldest first; without `waits` where it was sent */
  const queued = () => {
    const at = `/jobs/${bench().dataset.job}/`
    const waiting = Object.keys(localStorage)
      .filter((waits) => waits.startsWith('waits '))
      .sort()
      .map((waits) => ({ waits, ...read(waits) }))
    return [...taken, ...waiting]
      .filter(({ action }) => action.startsWith(at))
      .map(({ waits, action, fields, refused }) => {
        const { pathname, searchParams } = new URL(action, location)
        const kind = pathname.slice(at.length)
        const key = kind === 'bench' ? searchParams.get('step') : null
        return { waits, fields, refused, key, cause: kind === 'causes' }
      })
  }

  /** what was read last at a step, here or before */
  const before = (limits, earlier) => {
    const last = earlier.findLast(({ key, fields }) => key === limits.notAbove && fields.value)
    if (!last) return limits.before
    return (
      judge.readMeter(last.fields.value, stepOf(last.key).limits.unit, last.fields.unit || null).value ?? limits.before
    )
  }

  /** the finding of what was typed at a step, or the sentence that asks for something else */
  const judged = (step, fields, earlier) => {
    const { limits } = step
    const { key } = step.dataset
    if (!limits.unit || fields.as)
      return { finding: judge.seenFinding({ key, as: fields.as, words: fields.words?.trim() || null }, limits) }
    const found = judge.readMeter(fields.value, limits.unit, fields.unit || null)
    if (found.message) return { asks: judge.tell(found.message) }
    return {
      finding: judge.readingFinding({ key, value: found.value, unit: limits.unit }, limits, before(limits, earlier)),
    }
  }

  /** the stops among what waits that have no cause waiting behind them */
  const openHere = (entries) => {
    let open = []
    entries.forEach((entry, at) => {
      if (entry.cause && !entry.refused) open = open.filter(({ key }) => key !== entry.fields.of)
      const step = entry.key && stepOf(entry.key)
      if (!step) return
      const { finding } = judged(step, entry.fields, entries.slice(0, at))
      if (finding?.outcome === 'stop') open.push({ key: entry.key, step, finding })
    })
    return open
  }

  /** of the steps that are open, the first behind the one in sight */
  const behind = (open) => {
    const at = steps().indexOf(shown())
    return open.find((step) => steps().indexOf(step) > at)
  }

  /** a stop stays in sight until its cause is written, also where the server has its reading meanwhile */
  let held
  const isExplained = (entries, of) =>
    entries.some(({ cause, fields, refused }) => cause && !refused && fields.of === of)

  const drawStop = (entries) => {
    const [found] = openHere(entries)
    if (held && isExplained(entries, held.key)) held = undefined
    held = found ?? held
    const here = document.querySelector('#stop-here')
    const wasHidden = here.hidden
    here.hidden = !held
    if (!held) return
    const form = here.querySelector('form')
    here.querySelector('[data-stop=title]').textContent = held.finding.title
    here.querySelector('[data-stop=action]').textContent = held.finding.action
    here.querySelector('[data-stop=where]').textContent = held.step.querySelector('.do').textContent
    form.querySelector('[name=of]').value = held.key
    // each stop has a draft of its own
    form.setAttribute('action', `/jobs/${bench().dataset.job}/causes?of=${encodeURIComponent(held.key)}`)
    if (!wasHidden) return
    here.focus()
    here.scrollIntoView()
  }

  /** the step of the stop whose cause a form takes */
  const stopKeyOf = (form) => form.closest('.stop')?.dataset.key ?? form.elements.of.value

  /** the stops that the server knows, less those whose cause waits here; whether one is left */
  const drawKnown = (entries) => {
    const known = [...document.querySelectorAll('#stopped .stop')]
    // one that was written without the network names the step, and is the cause of one stop there
    const causes = entries.filter(({ cause, refused }) => cause && !refused).map(({ fields }) => fields.of)
    for (const stop of known) {
      const { value } = stop.querySelector('[name=of]')
      const at = causes.indexOf(causes.includes(value) ? value : stop.dataset.key)
      stop.hidden = at >= 0
      if (at >= 0) causes.splice(at, 1)
    }
    const open = known.some(({ hidden }) => !hidden)
    const section = document.querySelector('#stopped')
    if (section) section.hidden = !open || Boolean(held)
    return open
  }

  /** numbers of the gates of a step that neither the server nor this device has a result of */
  const openGates = (step, entries) =>
    (step.dataset.gates?.split(' ') ?? []).filter((number) => {
      const gate = stepNumbered(number)
      return !entries.some(({ key, fields, refused }, at) => {
        if (refused || key !== gate?.dataset.key) return false
        if (key === 'gate.tested-by') return Boolean(fields.words?.trim())
        return judged(gate, fields, entries.slice(0, at)).finding?.outcome === 'clear'
      })
    })

  const drawStep = (step, entries) => {
    const [gate, ...others] = openGates(step, entries)
    const waiting = gate !== undefined && step.querySelector('[name=despite]').value === ''
    const waits = step.querySelector('.waits')
    if (waits) waits.hidden = !waiting
    if (waiting) {
      const link = waits.querySelector('[data-to]')
      const { key } = stepNumbered(gate)?.dataset ?? {}
      Object.assign(link, { textContent: gate, href: `?step=${encodeURIComponent(key)}` })
      link.dataset.to = key
      waits.querySelector('.others').textContent = others.length > 0 ? ` and ${others.length} more` : ''
    }
    for (const part of step.querySelectorAll('.gated, [data-gated]')) part.hidden = waiting
    const unsent = entries.filter(({ waits }) => waits)
    step.querySelector('.queue').textContent = unsent.length > 0 ? ` · ${unsent.length} not sent yet` : ''
    const mine = unsent.findLast(({ key }) => key === step.dataset.key)
    const line = step.querySelector('.mine')
    line.hidden = !mine
    line.querySelector('span').textContent = mine ? `Not sent yet: ${wordsOf(mine)}` : ''
    line.querySelector('button').dataset.undo = mine?.waits ?? ''
    for (const tools of step.querySelectorAll('.marks, .timers, [data-photo]')) tools.hidden = false
    // the form says which was pressed in a field of its own
    for (const button of step.querySelectorAll('button[name]')) {
      button.dataset.name = button.name
      button.removeAttribute('name')
    }
  }

  const wordsOf = ({ fields: { as, value, unit, words } }) =>
    as === 'wrong'
      ? 'It is wrong'
      : as
        ? ['Done', words].filter(Boolean).join(', ')
        : [value, unit].filter(Boolean).join(' ')

  const placeOf = () => `place ${bench().dataset.job}`

  const draw = (wanted, goOn) => {
    if (!bench()) return
    const entries = queued()
    drawStop(entries)
    const stopped = drawKnown(entries) || Boolean(held)
    const done = new Set(entries.map(({ key }) => key))
    const open = steps().filter((step) => !done.has(step.dataset.key) && !step.querySelector('.last'))
    const current = stepOf(wanted) ?? (goOn ? behind(open) : shown()) ?? open[0] ?? steps().at(-1)
    for (const step of steps()) {
      step.hidden = stopped || step !== current
      drawStep(step, entries)
    }
    // a photo belongs to the step in sight, or to the one that stopped
    const stop = document.querySelector('#stopped .stop:not([hidden])')?.dataset.key
    const pictured = held?.step ?? (stopped ? stepOf(stop) : current)
    document.querySelector('#photo-here [name=caption]').value = pictured
      ? `${pictured.dataset.number} ${pictured.querySelector('.do').textContent}`.slice(0, 200)
      : ''
    if (stopped) return
    // the place is remembered over a page loaded anew, also one that was kept, and one opened from elsewhere
    const despite = current.querySelector('[name=despite]').value
    const address = `?step=${encodeURIComponent(current.dataset.key)}${despite && '&despite=yes'}`
    history.replaceState(history.state, '', address)
    try {
      localStorage.setItem(placeOf(), current.dataset.key)
    } catch {
      // a device that is full remembers no place
    }
  }

  /** where one was, of a page that names no step: there, unless it is done */
  const remembered = () => {
    const asked = new URL(location.href).searchParams.get('step')
    if (asked || !bench()) return asked
    const step = stepOf(localStorage.getItem(placeOf()))
    return step && !step.querySelector('.last') ? step.dataset.key : null
  }

  const tell = (step, text, outcome) => {
    const line = step.querySelector('.judged')
    line.className = `judged ${outcome}`
    line.textContent = text
  }

  const fieldsOf = (form, button) => {
    const fields = Object.fromEntries(new FormData(form))
    return button?.dataset.name ? { ...fields, [button.dataset.name]: button.value } : fields
  }

  /** what says nothing is no cause: it would open the steps */
  const writing = (event) => {
    const form = event.target.closest?.('button')?.form
    if (form?.dataset.keep !== 'cause' || judge.saysCause(form.elements.text.value)) return
    event.preventDefault()
    const box = form.elements.text
    box.setAttribute('aria-invalid', 'true')
    form.querySelector('.letters')?.remove()
    const says = Object.assign(document.createElement('p'), { className: 'error letters', role: 'alert' })
    says.textContent = `The cause takes two words, or ${judge.fewestLetters} letters, that tell it: what was wrong, and what was done about it.`
    box.before(says)
    box.focus()
  }

  const pressed = (event) => {
    const { target } = event
    const button = target.closest?.('#bench .step button, #bench .step a[data-to], #bench .step a[data-despite]')
    if (!button) return
    const step = button.closest('.step')
    navigator.wakeLock?.request('screen').catch(() => {})
    const { put, timer, to, undo, despite } = button.dataset
    const box = step.querySelector('[name=value]')
    if (to) {
      event.preventDefault()
      draw(to)
      scrollTo(0, 0)
    } else if (despite !== undefined) {
      event.preventDefault()
      step.querySelector('[name=despite]').value = 'yes'
      draw()
      box.focus()
    } else if (put === 'OL') box.value = 'OL'
    else if (put === 'sign') box.value = /^[-−]/.test(box.value) ? box.value.slice(1) : `-${box.value}`
    else if (timer) count(step, button, Number(timer))
    else if (undo) document.dispatchEvent(new CustomEvent('undo', { detail: undo }))
    else if (button.type === 'submit' && button.form.dataset.keep === 'reading') submitting(event, step, button)
  }

  const submitting = (event, step, button) => {
    const { form } = button
    const { asks } = judged(step, fieldsOf(form, button), queued())
    tell(step, '', '')
    if (asks) {
      event.preventDefault()
      tell(step, asks, 'unknown')
      step.querySelector('[name=value]').focus()
      return
    }
    form.querySelector('[data-pressed]')?.remove()
    if (!button.dataset.name) return
    const field = Object.assign(document.createElement('input'), { type: 'hidden', name: button.dataset.name })
    field.defaultValue = button.value
    field.dataset.pressed = 'yes'
    form.append(field)
  }

  const count = (step, button, seconds) => {
    const until = Date.now() + seconds * 1000
    const text = button.textContent
    const ticking = setInterval(() => {
      const left = Math.ceil((until - Date.now()) / 1000)
      button.textContent = left > 0 ? `${left} s` : text
      if (left > 0) return
      clearInterval(ticking)
      navigator.vibrate?.(400)
      tell(step, `${text} are over: read it now.`, 'clear')
    }, 250)
  }

  let waiting
  document.addEventListener('input', ({ target }) => {
    const step = target.closest('#bench .step')
    if (!step || target.name !== 'value') return
    clearTimeout(waiting)
    waiting = setTimeout(() => {
      const { finding } = judged(step, fieldsOf(target.form), queued())
      tell(step, finding ? finding.title : '', finding ? finding.outcome : '')
    }, 300)
  })
  document.addEventListener('click', pressed)
  document.addEventListener('click', writing)
  document.addEventListener('submit', ({ target }) => {
    if (!target.closest('#bench') || target.dataset.keep === 'photo') return
    // what stopped is read again once its cause is written
    const again = target.dataset.keep === 'cause' ? stopKeyOf(target) : null
    draw(again, target.dataset.keep === 'reading')
    if (target.dataset.keep === 'cause') scrollTo(0, 0)
  })
  document.addEventListener('change', ({ target }) => {
    if (target.matches('#photo-here [type=file]') && target.files[0]) target.form.requestSubmit()
  })
  // keep.js tells when a page came in place of this one, or what waits has changed
  document.addEventListener('kept', () => draw())
  document.addEventListener('taken', ({ detail }) => taken.push(detail))
  document.addEventListener('shown', () => {
    taken = []
    const typed =
      held && localStorage.getItem(`typed /jobs/${bench()?.dataset.job}/causes?of=${encodeURIComponent(held.key)}`)
    const stop =
      held && [...document.querySelectorAll('#stopped .stop')].find(({ dataset }) => dataset.key === held.key)
    held = undefined
    // one goes on where one is, whatever the server would show next; what it refuses is shown where it belongs
    const here = new URL(location.href).searchParams.get('step')
    draw(document.querySelector('main .error-summary:not(#stopped, #stop-here)') ? null : here)
    // the place of the step is its top
    if (!document.querySelector('#stopped')) scrollTo(0, 0)
    if (!typed || !stop) return
    // what was being written goes on in the form of the stop as the server knows it
    const box = stop.querySelector('textarea')
    box.value = JSON.parse(typed).text
    box.dispatchEvent(new Event('input', { bubbles: true }))
    box.focus()
  })
  // another page of this device had something kept by the server: what it answered is not on this one
  addEventListener('storage', ({ key, newValue }) => {
    if (bench() && key?.startsWith('waits ') && newValue === null) location.reload()
  })
  document.addEventListener('visibilitychange', () => {
    if (!document.hidden && bench()) navigator.wakeLock?.request('screen').catch(() => {})
  })
  draw(remembered())
  if (bench() && !('serviceWorker' in navigator)) document.querySelector('#not-offline').hidden = false
}
