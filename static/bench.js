// One step a screen: judges what is typed by the functions of the server (judge.js), moves on, and fills the screen with a
// stop, with the network or without it. What waits is kept and sent by keep.js.
{
  const read = (key) => JSON.parse(localStorage.getItem(key))
  const bench = () => document.querySelector('#bench')
  const steps = () => [...document.querySelectorAll('#bench .step')]
  const stepOf = (key) => steps().find((step) => step.dataset.key === key)
  const shown = () => steps().find((step) => !step.hidden)

  /** what was typed here for this job and the server does not have yet, the oldest first */
  const queued = () => {
    const at = `/jobs/${bench().dataset.job}/`
    return Object.keys(localStorage)
      .filter((key) => key.startsWith('waits '))
      .sort()
      .map(read)
      .filter(({ action }) => action.startsWith(at))
      .map(({ action, fields }) => ({
        fields,
        key: new URL(action, location).searchParams.get('step'),
        cause: action.endsWith('/causes'),
      }))
  }

  /** what was read last at a step, here or before */
  const before = (limits, earlier) => {
    const last = earlier.findLast(({ key, fields }) => key === limits.notAbove && fields.value)
    if (!last) return limits.before
    const { unit } = JSON.parse(stepOf(last.key).dataset.limits)
    return judge.readMeter(last.fields.value, unit, last.fields.unit || null).value ?? limits.before
  }

  /** the finding of what was typed at a step, or the sentence that asks for something else */
  const judged = (step, fields, earlier) => {
    const limits = JSON.parse(step.dataset.limits)
    const { key } = step.dataset
    if (!limits.unit)
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
      if (entry.cause) open = open.filter(({ key }) => key !== entry.fields.of)
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

  const draw = (wanted, goOn) => {
    if (!bench()) return
    const entries = queued()
    const done = new Set(entries.map(({ key }) => key))
    const [stop] = openHere(entries)
    const explained = entries.some(
      ({ cause, fields }) => cause && document.querySelector(`#stopped [name=of][value="${fields.of}"]`),
    )
    const here = document.querySelector('#stop-here')
    const known = document.querySelector('#stopped')
    if (known) known.hidden = explained || Boolean(stop)
    const wasHidden = here.hidden
    here.hidden = !stop
    if (stop) {
      here.querySelector('[data-stop=title]').textContent = stop.finding.title
      here.querySelector('[data-stop=action]').textContent = stop.finding.action
      here.querySelector('[data-stop=where]').textContent = stop.step.querySelector('.do').textContent
      here.querySelector('[name=of]').value = stop.key
      if (wasHidden) here.focus()
    }
    const held = stop || (bench().dataset.stopped && !explained)
    const open = steps().filter((step) => !done.has(step.dataset.key) && !step.querySelector('.last'))
    const current = stepOf(wanted) ?? (goOn ? behind(open) : shown()) ?? open[0] ?? steps().at(-1)
    for (const step of steps()) {
      step.hidden = Boolean(held) || step !== current
      step.querySelector('.queue').textContent = entries.length > 0 ? ` · ${entries.length} not sent yet` : ''
      for (const tools of step.querySelectorAll('.tools, .timers')) tools.hidden = false
      // the form says which was pressed in a field of its own
      for (const button of step.querySelectorAll('button[name]')) {
        button.dataset.name = button.name
        button.removeAttribute('name')
      }
    }
    // the place is remembered over a page loaded anew, also one that was kept
    if (!held && current) history.replaceState(history.state, '', `?step=${encodeURIComponent(current.dataset.key)}`)
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

  /** keeps page, script and style for when there is no network */
  const remember = async () => {
    if (!('serviceWorker' in navigator) || !navigator.onLine) return
    const files = [...document.querySelectorAll('link[href^="/static/"], script[src^="/static/"]')].map(
      ({ href, src }) => href || src,
    )
    try {
      await navigator.serviceWorker.register('/static/offline.js', { scope: '/jobs/' })
      const cache = await caches.open('bench')
      await cache.addAll([location.pathname, ...files])
    } catch {
      // without it the page works as long as it is not loaded anew
    }
  }

  const pressed = (event) => {
    const { target } = event
    const button = target.closest?.('#bench .step button, #bench .step a[data-to]')
    if (!button) return
    const step = button.closest('.step')
    navigator.wakeLock?.request('screen').catch(() => {})
    const { put, timer, to } = button.dataset
    const box = step.querySelector('[name=value]')
    if (to) {
      event.preventDefault()
      draw(to)
      scrollTo(0, 0)
    } else if (put === 'OL') box.value = 'OL'
    else if (put === 'sign') box.value = /^[-−]/.test(box.value) ? box.value.slice(1) : `-${box.value}`
    else if (timer) count(step, button, Number(timer))
    else if (button.type === 'submit') submitting(event, step, button)
  }

  const submitting = (event, step, button) => {
    const { form } = button
    const { asks } = judged(step, fieldsOf(form, button), queued())
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
  document.addEventListener('submit', ({ target }) => {
    if (target.closest('#bench')) draw(null, true)
  })
  // keep.js tells when a page came in place of this one, or what waits has changed
  document.addEventListener('kept', () => draw())
  document.addEventListener('shown', () => {
    draw()
    remember()
  })
  draw(new URL(location.href).searchParams.get('step'))
  remember()
}
