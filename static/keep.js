// Keeps what is typed into form[data-keep] on this device until the server has acknowledged it. An entry is stored
// before it is sent and carries a once-key: a lost answer or a closed tab loses nothing, sending again doubles nothing.
// Where nothing can be stored, the forms work as plain forms.
{
  const read = (key) => JSON.parse(localStorage.getItem(key))
  const forget = (key) => localStorage.removeItem(key)
  const write = (key, value) => {
    try {
      localStorage.setItem(key, JSON.stringify(value))
      return true
    } catch {
      return false
    }
  }
  const waiting = () =>
    Object.keys(localStorage)
      .filter((key) => key.startsWith('waits '))
      .sort()
  const actionOf = (form) => form.getAttribute('action')
  const formOf = (action, page = document) =>
    [...page.querySelectorAll('main form[data-keep]')].find((form) => actionOf(form) === action)
  /** "/jobs/…", of which an entry is part */
  const ownerOf = (action) => /^\/[^/]+\/[^/#?]+/.exec(action)[0]
  const isOf = (action, page) =>
    [...page.querySelectorAll('main form[data-keep]')].some((form) => ownerOf(actionOf(form)) === ownerOf(action))
  const draftOf = (action) => `typed ${action}`
  const newKey = () =>
    Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('')
  let clearing
  /** a sentence at the foot of the window for some seconds */
  const say = (text) => {
    const live = document.querySelector('#live')
    live.textContent = text
    clearTimeout(clearing)
    clearing = setTimeout(() => live.replaceChildren(), 8000)
  }
  const part = (tag, attributes, ...inside) => {
    const made = Object.assign(document.createElement(tag), attributes)
    made.append(...inside)
    return made
  }
  const button = (text, onclick) => part('button', { className: 'second small', onclick }, text)

  /** nothing was typed since the page was shown or a form was sent, so the page may be shown anew */
  let idle = true
  let sending = false
  let why = []
  let said = ''

  const restore = () => {
    for (const form of document.querySelectorAll('main form[data-keep]')) {
      const fields = read(draftOf(actionOf(form))) ?? {}
      for (const field of form.elements) {
        if (!(field.name in fields)) continue
        if (field.type === 'radio') field.checked = field.value === fields[field.name]
        else field.value = fields[field.name]
      }
    }
  }

  /** From what waits back to what is typed; `answered` is the form as the server answered it, with its hidden fields. */
  const takeBack = (key, answered) => {
    const { action, fields } = read(key)
    for (const { name, value } of answered?.querySelectorAll('[type=hidden]') ?? []) fields[name] = value
    if (write(draftOf(action), fields)) forget(key)
  }

  /** the fields that differ from what the page held, in words */
  const wordsOf = (form) =>
    [...form.elements]
      .filter((field) => field.name && field.type !== 'hidden')
      .map((field) => {
        if (field.type === 'radio') return field.checked && !field.defaultChecked ? field.labels[0].textContent : ''
        if (field.options) return field.value && field.selectedOptions[0].text
        return field.value === field.defaultValue ? '' : field.value
      })
      .filter(Boolean)
      .join(' · ')

  const lineOf = (key) => {
    const { action, noun, text, refused, picture } = read(key)
    const form = !picture && formOf(action)
    const back = () => {
      if (read(draftOf(action))?.once) return say('Something else is typed in that form; send it or empty it first.')
      takeBack(key)
      delete form.dataset.sent
      restore()
      form.scrollIntoView()
      draw()
    }
    const away = () => {
      discard(key)
      draw()
    }
    return part(
      'li',
      {},
      part('p', {}, `${noun}: ${text}`),
      refused ? part('p', {}, part('strong', {}, `Not taken: ${refused}`)) : '',
      form ? button('Back into the form', back) : part('a', { href: ownerOf(action) }, 'Open its page'),
      refused ? button('Throw away', away) : '',
    )
  }

  /** shows what waits */
  const draw = () => {
    const keys = waiting()
    const nouns = new Set(keys.map((key) => read(key).noun))
    const noun = nouns.size > 1 ? 'entrie' : [...nouns][0]
    const title =
      keys.length === 1
        ? `1 ${noun} waits on this device for the server`
        : `${keys.length} ${noun}s wait on this device for the server`
    const shown = part(
      'div',
      {},
      part('h2', {}, title),
      part('p', {}, ...why),
      part(
        'p',
        {},
        `It waits in this browser under ${location.host}: it is sent only where a page is open under that address.`,
      ),
      document.querySelector('#bench') ? '' : part('p', {}, 'What stands on this page does not count it yet.'),
      part('ul', {}, ...keys.map(lineOf)),
      button('Send now', () => send(true)),
    )
    const box = document.querySelector('#waiting')
    box.hidden = keys.length === 0
    // what did not change stays, with the focus in it
    if (box.innerHTML !== shown.innerHTML) box.replaceChildren(...shown.childNodes)
    if (keys.length > 0 && title !== said) say(`${title}.`)
    said = keys.length > 0 ? title : ''
    document.dispatchEvent(new Event('kept'))
  }

  /** the page as the server answered it, in the place of this one */
  const show = (page, hash) => {
    document.querySelector('main').replaceWith(page.querySelector('main'))
    document.title = page.title
    document.dispatchEvent(new Event('placed'))
    restore()
    const summary = document.querySelector('main [autofocus]')
    const place = summary ?? document.querySelector(hash || 'main')
    // what had the focus is gone: it goes to the part that was sent, as after a whole page
    place.tabIndex = -1
    place.focus()
    place.scrollIntoView()
    document.dispatchEvent(new Event('shown'))
  }

  /** the steps at the machine as they are now, for when there is no network */
  const keepPage = async ({ url, headers }, text, page) => {
    if (!page.querySelector('#bench') || !('caches' in window)) return
    const kept = await caches.open('bench').catch(() => undefined)
    await kept?.put(new URL(url).pathname, new Response(text, { headers })).catch(() => {})
  }

  /** an entry of the job may have been typed on another of its pages than this one */
  const isSamePage = (page) => Boolean(page.querySelector('#bench')) === Boolean(document.querySelector('#bench'))

  /** sends one entry; false where the others need not be tried now */
  const sendOne = async (key) => {
    const entry = read(key)
    const { noun, action, fields, picture } = entry
    const { hash } = new URL(action, location)
    let answer
    let text
    let page
    try {
      answer = await fetch(action, {
        method: 'POST',
        body: await bodyOf(key),
        headers: { Accept: 'text/html' },
        signal: AbortSignal.timeout(15_000),
      })
      text = await answer.text()
      page = new DOMParser().parseFromString(text, 'text/html')
    } catch {
      why = [
        'The server cannot be reached from here now. This is sent when it can be, and when the page is opened again.',
      ]
      return false
    }
    const answered = formOf(action, page)
    // other answers than the page itself, as of a network that asks for a login, acknowledge nothing
    if (answer.ok && answer.redirected && isOf(action, page)) {
      await keepPage(answer, text, page)
      discard(key)
      if (!fields.once) forget(draftOf(action))
      const stop = page.querySelector('#stopped')
      // a stop is shown whatever is being typed: that stays, and is back in its form
      if (!idle && !stop) document.dispatchEvent(new CustomEvent('taken', { detail: entry }))
      else if (isOf(action, document))
        if (isSamePage(page)) show(page, hash)
        else location.reload()
      const told = [...(stop?.querySelectorAll('.stop > p') ?? [])].slice(0, 2).map(({ textContent }) => textContent)
      say(stop ? `Stop. ${told.join(' ')}` : `Kept by the server: 1 ${noun}.`)
      return true
    }
    // 429 is no refusal of this entry: too much came at once
    if (answer.status >= 400 && answer.status < 500 && answer.status !== 429) {
      const free = !fields.once || !read(draftOf(action))
      const refused = page.querySelector('.error-summary li, .error-summary p, .lead')?.textContent ?? answer.status
      if (!picture && idle && free && answered && formOf(action)) {
        takeBack(key, answered)
        show(page, hash)
      } else write(key, { ...read(key), refused })
      return true
    }
    const enter = part('a', { href: `/enter?to=${encodeURIComponent(location.pathname)}` }, 'Enter it')
    why =
      new URL(answer.url).pathname === '/enter'
        ? ['The server asks for its passphrase. ', enter, '; this is sent then.']
        : ['The server cannot keep this now. It is sent again every half minute, and when the page is opened again.']
    return false
  }

  /** sends what waits, one after the other; what was refused only when asked to */
  const send = async (all = false) => {
    if (sending) return
    sending = true
    const tried = new Set()
    const next = () => waiting().find((key) => !tried.has(key) && (all || !read(key).refused))
    for (let key = next(); key; key = next()) {
      tried.add(key)
      if (!(await sendOne(key))) break
    }
    sending = false
    draw()
  }

  /** one thing done with the pictures that wait, which are too large for the other store */
  const pictures = async (mode, work) => {
    const open = indexedDB.open('lampline', 1)
    open.onupgradeneeded = () => open.result.createObjectStore('pictures')
    await new Promise((resolve, reject) =>
      Object.assign(open, { onsuccess: resolve, onerror: () => reject(open.error) }),
    )
    const doing = open.result.transaction('pictures', mode)
    const asked = work(doing.objectStore('pictures'))
    await new Promise((resolve, reject) =>
      Object.assign(doing, { oncomplete: resolve, onabort: () => reject(doing.error) }),
    )
    open.result.close()
    return asked.result
  }

  /** the picture no larger than is kept well: a telephone's own is ten times that */
  const smaller = async (file) => {
    const image = await createImageBitmap(file)
    const scale = Math.min(1, 2400 / Math.max(image.width, image.height))
    if (scale === 1 && file.size < 4e6) return file
    const canvas = part('canvas', { width: image.width * scale, height: image.height * scale })
    canvas.getContext('2d').drawImage(image, 0, 0, canvas.width, canvas.height)
    return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.85))
  }

  const keepPhoto = async (form, file) => {
    if (form.dataset.sent) return
    form.dataset.sent = 'yes'
    const key = `waits ${Date.now()} ${newKey()}`
    const { photo: _photo, ...fields } = Object.fromEntries(new FormData(form))
    const entry = {
      action: actionOf(form),
      noun: 'photo',
      text: wordsOf(form) || fields.caption,
      fields,
      picture: true,
    }
    try {
      // what is no picture goes as it is: the server says so
      const shrunk = await smaller(file).catch(() => file)
      await pictures('readwrite', (kept) => kept.put(shrunk, key))
    } catch {
      form.submit()
      return
    }
    if (!write(key, entry)) {
      form.submit()
      return
    }
    form.reset()
    form.elements.once.value = newKey()
    delete form.dataset.sent
    idle = true
    send()
  }

  /** what is sent of an entry, with how long ago it was typed: that needs no clock that is right */
  const bodyOf = async (key) => {
    const { fields, picture } = read(key)
    const age = String(Math.max(0, Date.now() - Number(key.split(' ')[1])))
    if (!picture) return new URLSearchParams({ ...fields, age })
    const body = new FormData()
    for (const [name, value] of Object.entries({ ...fields, age })) body.set(name, value)
    body.set('photo', await pictures('readonly', (kept) => kept.get(key)), 'photo.jpg')
    return body
  }

  /** an entry that is done with, and its picture */
  const discard = (key) => {
    if (read(key)?.picture) pictures('readwrite', (kept) => kept.delete(key)).catch(() => {})
    forget(key)
  }

  const submitted = (event) => {
    const form = event.target
    if (!form.matches('main form[data-keep]')) return
    const box = form.querySelector('[type=file]')
    if (box) {
      // without a photo the server says what is missing
      if (!box.files[0]) return
      event.preventDefault()
      keepPhoto(form, box.files[0])
      return
    }
    const action = actionOf(form)
    const fields = Object.fromEntries(new FormData(form))
    // a second tap: the form was sent and nothing was typed since
    if (!form.dataset.sent) {
      const key = `waits ${Date.now()} ${newKey()}`
      if (!write(key, { action, noun: form.dataset.keep, text: wordsOf(form), fields })) return
      if (fields.once) {
        forget(draftOf(action))
        form.reset()
        form.elements.once.value = newKey()
      } else {
        for (const other of waiting()) if (other !== key && read(other).action === action) forget(other)
      }
      form.dataset.sent = 'yes'
      idle = true
    }
    event.preventDefault()
    send()
  }

  if (write('keeps', true)) {
    forget('keeps')
    document.addEventListener('input', ({ target: { form } }) => {
      if (!form?.matches('main form[data-keep]')) return
      idle = false
      delete form.dataset.sent
      if (!form.querySelector('[type=file]')) write(draftOf(actionOf(form)), Object.fromEntries(new FormData(form)))
    })
    document.addEventListener('submit', submitted)
    document.addEventListener('undo', ({ detail }) => {
      takeBack(detail)
      restore()
      draw()
    })
    addEventListener('online', () => send())
    addEventListener('storage', draw)
    addEventListener('pageshow', () => send())
    setInterval(() => document.hidden || send(), 30_000)
    restore()
    // one address of two for the same machine: what is typed from here on waits under that one alone
    const { address } = document.documentElement.dataset
    const stored = Object.keys(localStorage).some((key) => /^(waits|typed) /.test(key))
    if (address && !stored) location.replace(`${address}${location.pathname}${location.search}${location.hash}`)
  }
}
