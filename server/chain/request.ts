import type { Polarity, ProtectionClass, VoltageWindow } from '../plate/labelReading.js'

export type { Polarity, ProtectionClass, VoltageWindow }

export interface DcPlug {
  outerMm?: number | null
  innerMm?: number | null
  polarity?: Polarity | null
  name?: string | null
}

export interface Output {
  /** null: not known, so output-kind answers unknown */
  kind: 'dc' | 'ac' | null
  voltageV: number
  currentA?: number | null
  powerW?: number | null
}

export interface Site {
  /** ISO 3166-1 alpha-2 */
  country?: string | null
  voltageV?: number | null
  frequencyHz?: number | null
  /** IEC letter */
  socket?: string | null
}

export interface SupplyInput {
  voltages?: VoltageWindow[] | null
  frequenciesHz?: number[] | null
  currentA?: number | null
  powerVA?: number | null
  powerW?: number | null
  /** where a voltage selector is set now [V] */
  selectorV?: number | null
}

export interface Lead {
  lengthM: number
  areaMm2?: number | null
  awg?: number | null
}

export interface Measured {
  offLoadV?: number | null
  loadedV?: number | null
  polarity?: Polarity | null
}

export interface Supply {
  /** read first; the fields below override what it says */
  label?: string | null
  input?: SupplyInput | null
  technology?: 'switch-mode' | 'transformer' | 'unknown' | null
  regulated?: boolean | null
  protectionClass?: ProtectionClass | null
  inlet?: string | null
  outputs?: Output[] | null
  /** what all outputs give together at most [W], where the plate prints it */
  outputsTotalW?: number | null
  /** on the lead to the machine */
  plug?: DcPlug | null
  lead?: Lead | null
  /** marking of the mains-side fuse-link */
  fuse?: string | null
  measured?: Measured | null
}

export interface DeviceInput {
  /** null: not known, so output-kind answers unknown */
  kind: 'dc' | 'ac' | null
  voltageV: number
  currentA?: number | null
  currentIs?: 'plate' | 'measured' | null
  tolerancePercent?: number | null
}

export interface Device {
  /** the plate beside the machine's power socket */
  label?: string | null
  inputs?: DeviceInput[] | null
  regulatedNeeded?: boolean | null
  jack?: DcPlug | null
}

export interface Cord {
  plug?: string | null
  connector?: string | null
  ratedV?: number | null
  ratedA?: number | null
  earthed?: boolean | null
  areaMm2?: number | null
  awg?: number | null
  plugFitted?: 'moulded' | 'rewired' | null
  /** earthed null: an adapter is used, but not known whether it passes the earth on */
  adapter?: { earthed: boolean | null } | null
}

/** A converter is used; what is not known of it is null, and the topics that need it answer unknown. */
export interface Converter {
  kind: 'autotransformer' | 'isolating' | 'electronic' | null
  outputV: number | null
  ratedVA: number | null
}

/** Everything a person entered about one supply, one machine and one place. Unknown is null or absent, never 0. */
export interface CheckRequest {
  site: Site
  supply: Supply
  device: Device
  cord?: Cord | null
  converter?: Converter | null
}
