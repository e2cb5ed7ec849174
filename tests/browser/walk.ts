import type { Page } from 'playwright-core'

/** What a walk cost its reader. */
export interface Cost {
  /** boxes filled in and choices made */
  fields: number
  /** buttons, links and folds pressed */
  presses: number
  /** words of the page with the first answer that stand to be read, before anything is unfolded */
  words: number
  /** its height at 1280 px and at 360 px of width [px] */
  wide: number
  narrow: number
}

const wordsOfMain = `(() => {
  const texts = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT)
  let words = 0
  for (let text = texts.nextNode(); text; text = texts.nextNode()) {
    const part = text.parentElement
    if (part.closest('select, .visually-hidden, .paper-only, [popover]') || !part.checkVisibility()) continue
    words += text.data.split(/\\s+/).filter(Boolean).length
  }
  return words
})()`

/** In the browser: opens the folds around a box; how many were closed, and of which kind it is. */
const opensFolds = (selector: string): string => `(() => {
  const box = document.querySelector(${JSON.stringify(selector)})
  let closed = 0
  for (let at = box.closest('details'); at; at = at.parentElement.closest('details')) {
    closed += at.open ? 0 : 1
    at.open = true
  }
  return { closed, kind: box.type }
})()`

/** A person's way through the pages, counted. */
export class Walk {
  readonly cost: Cost = { fields: 0, presses: 0, words: 0, wide: 0, narrow: 0 }

  constructor(
    readonly page: Page,
    readonly origin: string,
  ) {}

  /** Fills a box in, or makes a choice, by the name of the box; `within` a form where the page has several such boxes. */
  async set(name: string, value: string, within = 'main'): Promise<void> {
    const selector = `${within} [name="${name}"]:not([type=hidden])`
    await this.page.waitForSelector(selector, { state: 'attached' })
    const { closed, kind } = await this.page.evaluate<{ closed: number; kind: string }>(opensFolds(selector))
    const box = this.page.locator(kind === 'radio' ? `${selector}[value="${value}"]` : selector).first()
    if (kind === 'radio') await box.check({ force: true })
    else if (kind === 'select-one') await box.selectOption(value)
    else await box.fill(value)
    this.cost.fields += 1
    this.cost.presses += closed
  }

  /** Presses a button or a link that reads so. */
  async press(text: string | RegExp): Promise<void> {
    const named = { name: text, exact: typeof text === 'string' }
    const main = this.page.locator('main')
    // most lead on to another page; what stays on this one leads nowhere
    const led = this.page.waitForNavigation({ waitUntil: 'load', timeout: 4000 }).catch(() => null)
    await main.getByRole('button', named).or(main.getByRole('link', named)).first().click()
    await led
    this.cost.presses += 1
  }

  /** Everything that is read on the page. */
  async reads(): Promise<string> {
    return ((await this.page.textContent('main')) ?? '').replace(/\s+/g, ' ')
  }

  /** Measures the page that stands open. */
  async measure(): Promise<void> {
    const height = () => this.page.evaluate<number>('document.documentElement.scrollHeight')
    const narrowWas = this.page.viewportSize()
    await this.page.setViewportSize({ width: 360, height: 740 })
    this.cost.narrow = await height()
    await this.page.setViewportSize({ width: 1280, height: 900 })
    this.cost.wide = await height()
    this.cost.words = await this.page.evaluate<number>(wordsOfMain)
    if (narrowWas) await this.page.setViewportSize(narrowWas)
  }

  /** From the first screen to an answer. */
  async check(given: Record<string, string>): Promise<void> {
    await this.page.goto(this.origin)
    for (const [name, value] of Object.entries(given)) await this.set(name, value)
    await this.press('Check')
  }
}
