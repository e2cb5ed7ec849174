import { isIPv4 } from 'node:net'

interface Window {
  count: number
  endsAt: number
}

/**
 * Counts by key within windows of one length; a window begins with the first count of its key. It holds a limited
 * number of keys, and forgets the one that began first when there are more.
 */
export class WindowCount {
  // every window is as long as the others, so the order of insertion is the order in which they end
  private readonly windows = new Map<string, Window>()

  /**
   * @param windowMs  length of a window [ms]
   * @param elapsed   time that only goes forward [ms], so that setting the clock neither locks nor opens anything
   * @param mostKeys  keys held at the same time
   */
  constructor(
    private readonly windowMs: number,
    private readonly elapsed: () => number,
    private readonly mostKeys = 10_000,
  ) {}

  private current(key: string): Window | undefined {
    for (const [oldest, { endsAt }] of this.windows) {
      if (endsAt > this.elapsed()) break
      this.windows.delete(oldest)
    }
    return this.windows.get(key)
  }

  /** Counts one more; returns how many there are now. */
  add(key: string): number {
    const window = this.current(key)
    if (window) {
      window.count += 1
      return window.count
    }
    const [oldest] = this.windows.keys()
    if (oldest !== undefined && this.windows.size >= this.mostKeys) this.windows.delete(oldest)
    this.windows.set(key, { count: 1, endsAt: this.elapsed() + this.windowMs })
    return 1
  }

  count(key: string): number {
    return this.current(key)?.count ?? 0
  }

  /** Until the key's window ends [ms]; 0 where none has begun. */
  leftMs(key: string): number {
    const window = this.current(key)
    return window ? window.endsAt - this.elapsed() : 0
  }
}

/**
 * What stands for one client: its IPv4 address, or the first 64 bits of its IPv6 address, since one machine may take
 * any address of such a network (RFC 4291, 2.5.4; RFC 8981).
 */
export function clientKey(address = ''): string {
  const mapped = address.replace(/^::ffff:(?=\d+\.)/i, '')
  if (isIPv4(mapped)) return mapped
  const [head = '', tail] = (mapped.split('%')[0] ?? '').split('::')
  const groups = (text: string): string[] => text.split(':').filter((group) => group !== '')
  const left = Math.max(0, 8 - groups(head).length - groups(tail ?? '').length)
  const whole = tail === undefined ? groups(head) : [...groups(head), ...Array(left).fill('0'), ...groups(tail)]
  return whole.slice(0, 4).join(':')
}
