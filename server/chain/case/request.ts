export type {
  CheckRequest,
  Converter,
  Cord,
  DcPlug,
  Device,
  DeviceInput,
  Lead,
  Measured,
  Output,
  Pin,
  Readings,
  Site,
  Supply,
} from '../../facts/check.js'
export type { Polarity, ProtectionClass, VoltageWindow } from '../../plate/labelReading.js'
