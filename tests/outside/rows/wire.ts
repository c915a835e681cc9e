// Copied from published tables. Each row names its source; the label says how the source was seen.
// `printed` is text, for its digits.

import type { Cited } from './cited.ts'

const S1: Cited = {
  source: 'IACS definition, IEC 60028; same figure in a short-circuit constant table (17.241e-6 ohm·mm)',
  label: 'read-secondary'
}
const S2: Cited = { source: 'IACS / NBS Handbook 100', label: 'read-secondary' }
const S3: Cited = { source: 'FAA AC 43.13-1B ch. 11 par. 11-66d(4)', label: 'read-secondary' }
const S4: Cited = {
  source: 'University physics reference table of AWG, quoting a circuits textbook (Floyd, Electric Circuits Fundamentals)',
  label: 'read-secondary'
}
const S5: Cited = { source: 'ASTM B258 definition d=0.127*92^((36-n)/39), computed here', label: 'memory' }
const S6: Cited = { source: 'from the ASTM B258 diameter, computed here', label: 'memory' }
const S7: Cited = { source: 'FAA AC 43.13-1B ch. 11 Table 11-9', label: 'read-secondary' }
const S8: Cited = { source: 'IEC 60228 table 3', label: 'read-secondary' }
const S9: Cited = { source: 'IEC 60228 table 2', label: 'read-secondary' }
const S10: Cited = { source: 'ISO 6722-1 / ISO 19642', label: 'memory' }
const S11: Cited = { source: "a motorsport electronics maker's wiring appendix", label: 'read-secondary' }
const S12: Cited = { source: 'IEC 60228 annex, quoted by a cable maker', label: 'read-secondary' }

/** Annealed copper: resistivity at 20 °C in ohm·mm²/m, coefficient for each kelvin at 20 °C, temperature at which a straight line meets 0. */
export const COPPER = [
  { id: 'wire-001', what: 'resistivity', printed: '0.017241', ...S1 },
  { id: 'wire-002', what: 'coefficient', printed: '0.00393', ...S2 },
  { id: 'wire-003', what: 'zero', printed: '-234.5', ...S3 }
] as const

/** Solid wire by gauge: diameter in inches, area in circular mils, resistance of copper at 20 °C; the last rows are computed from the definition. */
export const SOLID_WIRE = [
  { id: 'wire-004', size: 'AWG 0000', printed: '0.46', of: 'diameterIn', ...S4 },
  { id: 'wire-005', size: 'AWG 0000', printed: '211600', of: 'circularMils', ...S4 },
  { id: 'wire-006', size: 'AWG 0000', printed: '0.049', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-010', size: 'AWG 00', printed: '0.3648', of: 'diameterIn', ...S4 },
  { id: 'wire-011', size: 'AWG 00', printed: '133080', of: 'circularMils', ...S4 },
  { id: 'wire-012', size: 'AWG 00', printed: '0.078', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-013', size: 'AWG 0', printed: '0.32485', of: 'diameterIn', ...S4 },
  { id: 'wire-014', size: 'AWG 0', printed: '105530', of: 'circularMils', ...S4 },
  { id: 'wire-015', size: 'AWG 0', printed: '0.0983', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-019', size: 'AWG 2', printed: '0.25763', of: 'diameterIn', ...S4 },
  { id: 'wire-020', size: 'AWG 2', printed: '66373', of: 'circularMils', ...S4 },
  { id: 'wire-021', size: 'AWG 2', printed: '0.1563', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-025', size: 'AWG 4', printed: '0.20431', of: 'diameterIn', ...S4 },
  { id: 'wire-026', size: 'AWG 4', printed: '41742', of: 'circularMils', ...S4 },
  { id: 'wire-027', size: 'AWG 4', printed: '0.2485', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-031', size: 'AWG 6', printed: '0.16202', of: 'diameterIn', ...S4 },
  { id: 'wire-032', size: 'AWG 6', printed: '26250', of: 'circularMils', ...S4 },
  { id: 'wire-033', size: 'AWG 6', printed: '0.3951', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-037', size: 'AWG 8', printed: '0.12849', of: 'diameterIn', ...S4 },
  { id: 'wire-038', size: 'AWG 8', printed: '16509', of: 'circularMils', ...S4 },
  { id: 'wire-039', size: 'AWG 8', printed: '0.6282', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-043', size: 'AWG 10', printed: '0.10189', of: 'diameterIn', ...S4 },
  { id: 'wire-044', size: 'AWG 10', printed: '10381', of: 'circularMils', ...S4 },
  { id: 'wire-045', size: 'AWG 10', printed: '0.9989', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-049', size: 'AWG 12', printed: '0.0808', of: 'diameterIn', ...S4 },
  { id: 'wire-050', size: 'AWG 12', printed: '6529', of: 'circularMils', ...S4 },
  { id: 'wire-051', size: 'AWG 12', printed: '1.588', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-055', size: 'AWG 14', printed: '0.06408', of: 'diameterIn', ...S4 },
  { id: 'wire-056', size: 'AWG 14', printed: '4106.8', of: 'circularMils', ...S4 },
  { id: 'wire-057', size: 'AWG 14', printed: '2.525', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-061', size: 'AWG 16', printed: '0.05082', of: 'diameterIn', ...S4 },
  { id: 'wire-062', size: 'AWG 16', printed: '2582.9', of: 'circularMils', ...S4 },
  { id: 'wire-063', size: 'AWG 16', printed: '4.016', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-067', size: 'AWG 18', printed: '0.0403', of: 'diameterIn', ...S4 },
  { id: 'wire-068', size: 'AWG 18', printed: '1624.3', of: 'circularMils', ...S4 },
  { id: 'wire-069', size: 'AWG 18', printed: '6.385', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-073', size: 'AWG 20', printed: '0.03196', of: 'diameterIn', ...S4 },
  { id: 'wire-074', size: 'AWG 20', printed: '1021.5', of: 'circularMils', ...S4 },
  { id: 'wire-075', size: 'AWG 20', printed: '10.15', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-079', size: 'AWG 22', printed: '0.02535', of: 'diameterIn', ...S4 },
  { id: 'wire-080', size: 'AWG 22', printed: '642.4', of: 'circularMils', ...S4 },
  { id: 'wire-081', size: 'AWG 22', printed: '16.14', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-085', size: 'AWG 24', printed: '0.0201', of: 'diameterIn', ...S4 },
  { id: 'wire-086', size: 'AWG 24', printed: '404.01', of: 'circularMils', ...S4 },
  { id: 'wire-087', size: 'AWG 24', printed: '25.67', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-091', size: 'AWG 26', printed: '0.01594', of: 'diameterIn', ...S4 },
  { id: 'wire-092', size: 'AWG 26', printed: '254.1', of: 'circularMils', ...S4 },
  { id: 'wire-093', size: 'AWG 26', printed: '40.81', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-097', size: 'AWG 28', printed: '0.01264', of: 'diameterIn', ...S4 },
  { id: 'wire-098', size: 'AWG 28', printed: '159.79', of: 'circularMils', ...S4 },
  { id: 'wire-099', size: 'AWG 28', printed: '64.9', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-103', size: 'AWG 30', printed: '0.01002', of: 'diameterIn', ...S4 },
  { id: 'wire-104', size: 'AWG 30', printed: '100.5', of: 'circularMils', ...S4 },
  { id: 'wire-105', size: 'AWG 30', printed: '103.2', of: 'ohmPerThousandFt', ...S4 },
  { id: 'wire-106', size: 'AWG 0000', printed: '11.684', of: 'diameterMm', ...S5 },
  { id: 'wire-107', size: 'AWG 0000', printed: '107.2193', of: 'areaMm2', ...S6 },
  { id: 'wire-108', size: 'AWG 0', printed: '8.25146', of: 'diameterMm', ...S5 },
  { id: 'wire-109', size: 'AWG 0', printed: '53.47512', of: 'areaMm2', ...S6 },
  { id: 'wire-110', size: 'AWG 4', printed: '5.1894', of: 'diameterMm', ...S5 },
  { id: 'wire-111', size: 'AWG 4', printed: '21.15064', of: 'areaMm2', ...S6 },
  { id: 'wire-112', size: 'AWG 8', printed: '3.26364', of: 'diameterMm', ...S5 },
  { id: 'wire-113', size: 'AWG 8', printed: '8.36556', of: 'areaMm2', ...S6 },
  { id: 'wire-114', size: 'AWG 10', printed: '2.58819', of: 'diameterMm', ...S5 },
  { id: 'wire-115', size: 'AWG 10', printed: '5.26115', of: 'areaMm2', ...S6 },
  { id: 'wire-116', size: 'AWG 12', printed: '2.05253', of: 'diameterMm', ...S5 },
  { id: 'wire-117', size: 'AWG 12', printed: '3.30877', of: 'areaMm2', ...S6 },
  { id: 'wire-118', size: 'AWG 14', printed: '1.62773', of: 'diameterMm', ...S5 },
  { id: 'wire-119', size: 'AWG 14', printed: '2.08091', of: 'areaMm2', ...S6 },
  { id: 'wire-120', size: 'AWG 16', printed: '1.29085', of: 'diameterMm', ...S5 },
  { id: 'wire-121', size: 'AWG 16', printed: '1.3087', of: 'areaMm2', ...S6 },
  { id: 'wire-122', size: 'AWG 18', printed: '1.02369', of: 'diameterMm', ...S5 },
  { id: 'wire-123', size: 'AWG 18', printed: '0.82305', of: 'areaMm2', ...S6 },
  { id: 'wire-124', size: 'AWG 20', printed: '0.81182', of: 'diameterMm', ...S5 },
  { id: 'wire-125', size: 'AWG 20', printed: '0.51762', of: 'areaMm2', ...S6 },
  { id: 'wire-126', size: 'AWG 22', printed: '0.6438', of: 'diameterMm', ...S5 },
  { id: 'wire-127', size: 'AWG 22', printed: '0.32553', of: 'areaMm2', ...S6 },
  { id: 'wire-128', size: 'AWG 24', printed: '0.51056', of: 'diameterMm', ...S5 },
  { id: 'wire-129', size: 'AWG 24', printed: '0.20473', of: 'areaMm2', ...S6 },
  { id: 'wire-130', size: 'AWG 28', printed: '0.32109', of: 'diameterMm', ...S5 },
  { id: 'wire-131', size: 'AWG 28', printed: '0.08098', of: 'areaMm2', ...S6 },
  { id: 'wire-132', size: 'AWG 36', printed: '0.127', of: 'diameterMm', ...S5 },
  { id: 'wire-133', size: 'AWG 36', printed: '0.01267', of: 'areaMm2', ...S6 }
] as const

/** Greatest resistance at 20 °C. */
export const TABLED_WIRE = [
  { id: 'wire-146', size: 'AWG 24', conductor: 'aircraft', printed: '28.4', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-148', size: 'AWG 22', conductor: 'aircraft', printed: '16.2', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-150', size: 'AWG 20', conductor: 'aircraft', printed: '9.88', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-152', size: 'AWG 18', conductor: 'aircraft', printed: '6.23', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-154', size: 'AWG 16', conductor: 'aircraft', printed: '4.81', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-156', size: 'AWG 14', conductor: 'aircraft', printed: '3.06', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-158', size: 'AWG 12', conductor: 'aircraft', printed: '2.02', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-160', size: 'AWG 10', conductor: 'aircraft', printed: '1.26', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-162', size: 'AWG 8', conductor: 'aircraft', printed: '0.7', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-164', size: 'AWG 6', conductor: 'aircraft', printed: '0.44', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-166', size: 'AWG 4', conductor: 'aircraft', printed: '0.28', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-168', size: 'AWG 2', conductor: 'aircraft', printed: '0.18', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-170', size: 'AWG 1', conductor: 'aircraft', printed: '0.15', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-172', size: 'AWG 0', conductor: 'aircraft', printed: '0.12', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-174', size: 'AWG 00', conductor: 'aircraft', printed: '0.09', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-176', size: 'AWG 000', conductor: 'aircraft', printed: '0.07', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-178', size: 'AWG 0000', conductor: 'aircraft', printed: '0.06', per: 'ohm/1000 ft', ...S7 },
  { id: 'wire-180', size: '0.5 mm2', conductor: 'class-5', printed: '39.0', per: 'ohm/km', ...S8 },
  { id: 'wire-182', size: '0.75 mm2', conductor: 'class-5', printed: '26.0', per: 'ohm/km', ...S8 },
  { id: 'wire-184', size: '1 mm2', conductor: 'class-5', printed: '19.5', per: 'ohm/km', ...S8 },
  { id: 'wire-186', size: '1.5 mm2', conductor: 'class-5', printed: '13.3', per: 'ohm/km', ...S8 },
  { id: 'wire-188', size: '2.5 mm2', conductor: 'class-5', printed: '7.98', per: 'ohm/km', ...S8 },
  { id: 'wire-190', size: '4 mm2', conductor: 'class-5', printed: '4.95', per: 'ohm/km', ...S8 },
  { id: 'wire-192', size: '6 mm2', conductor: 'class-5', printed: '3.3', per: 'ohm/km', ...S8 },
  { id: 'wire-194', size: '10 mm2', conductor: 'class-5', printed: '1.91', per: 'ohm/km', ...S8 },
  { id: 'wire-196', size: '16 mm2', conductor: 'class-5', printed: '1.21', per: 'ohm/km', ...S8 },
  { id: 'wire-198', size: '25 mm2', conductor: 'class-5', printed: '0.78', per: 'ohm/km', ...S8 },
  { id: 'wire-200', size: '35 mm2', conductor: 'class-5', printed: '0.554', per: 'ohm/km', ...S8 },
  { id: 'wire-202', size: '50 mm2', conductor: 'class-5', printed: '0.386', per: 'ohm/km', ...S8 },
  { id: 'wire-204', size: '70 mm2', conductor: 'class-5', printed: '0.272', per: 'ohm/km', ...S8 },
  { id: 'wire-206', size: '0.5 mm2', conductor: 'class-2', printed: '36.0', per: 'ohm/km', ...S9 },
  { id: 'wire-208', size: '1 mm2', conductor: 'class-2', printed: '18.1', per: 'ohm/km', ...S9 },
  { id: 'wire-209', size: '1.5 mm2', conductor: 'class-2', printed: '12.1', per: 'ohm/km', ...S9 },
  { id: 'wire-211', size: '4 mm2', conductor: 'class-2', printed: '4.61', per: 'ohm/km', ...S9 },
  { id: 'wire-212', size: '6 mm2', conductor: 'class-2', printed: '3.08', per: 'ohm/km', ...S9 },
  { id: 'wire-214', size: '16 mm2', conductor: 'class-2', printed: '1.15', per: 'ohm/km', ...S9 },
  { id: 'wire-216', size: '35 mm2', conductor: 'class-2', printed: '0.524', per: 'ohm/km', ...S9 },
  { id: 'wire-217', size: '0.35 mm2', conductor: 'iso-6722', printed: '54.4', per: 'ohm/km', ...S10 },
  { id: 'wire-218', size: '0.5 mm2', conductor: 'iso-6722', printed: '37.1', per: 'ohm/km', ...S10 },
  { id: 'wire-219', size: '0.75 mm2', conductor: 'iso-6722', printed: '24.7', per: 'ohm/km', ...S10 },
  { id: 'wire-220', size: '1 mm2', conductor: 'iso-6722', printed: '18.5', per: 'ohm/km', ...S10 },
  { id: 'wire-222', size: '1.5 mm2', conductor: 'iso-6722', printed: '12.7', per: 'ohm/km', ...S10 },
  { id: 'wire-224', size: '2.5 mm2', conductor: 'iso-6722', printed: '7.6', per: 'ohm/km', ...S10 },
  { id: 'wire-226', size: '4 mm2', conductor: 'iso-6722', printed: '4.71', per: 'ohm/km', ...S10 },
  { id: 'wire-228', size: '6 mm2', conductor: 'iso-6722', printed: '3.14', per: 'ohm/km', ...S10 },
  { id: 'wire-230', size: '10 mm2', conductor: 'iso-6722', printed: '1.82', per: 'ohm/km', ...S10 },
  { id: 'wire-232', size: '16 mm2', conductor: 'iso-6722', printed: '1.16', per: 'ohm/km', ...S10 },
  { id: 'wire-234', size: '25 mm2', conductor: 'iso-6722', printed: '0.743', per: 'ohm/km', ...S10 }
] as const

/** Area of stranded aircraft wire, circular mils. */
export const AIRCRAFT_AREAS = [
  { id: 'wire-147', size: 'AWG 24', printed: '475', ...S7 },
  { id: 'wire-151', size: 'AWG 20', printed: '1216', ...S7 },
  { id: 'wire-153', size: 'AWG 18', printed: '1900', ...S7 },
  { id: 'wire-157', size: 'AWG 14', printed: '3831', ...S7 },
  { id: 'wire-159', size: 'AWG 12', printed: '5874', ...S7 },
  { id: 'wire-163', size: 'AWG 8', printed: '16983', ...S7 },
  { id: 'wire-165', size: 'AWG 6', printed: '26818', ...S7 },
  { id: 'wire-169', size: 'AWG 2', printed: '66500', ...S7 },
  { id: 'wire-171', size: 'AWG 1', printed: '81700', ...S7 },
  { id: 'wire-175', size: 'AWG 00', printed: '133000', ...S7 },
  { id: 'wire-177', size: 'AWG 000', printed: '166500', ...S7 }
] as const

/** Typical resistance at 20 °C of tin-plated aircraft wire M22759/16, ohm/1000 ft: 0.77 to 0.89 of the greatest. */
export const TYPICAL_WIRE = [
  { id: 'wire-244', size: 'AWG 24', printed: '22', ...S11 },
  { id: 'wire-246', size: 'AWG 20', printed: '8.5', ...S11 },
  { id: 'wire-247', size: 'AWG 18', printed: '5.5', ...S11 },
  { id: 'wire-249', size: 'AWG 14', printed: '2.7', ...S11 }
] as const

/** Factor that brings a measured resistance back to 20 °C. The source rounds the coefficient to 0.004 for each kelvin. */
export const BACK_TO_20 = [
  { id: 'wire-250', conductorC: 5, printed: '1.064', ...S12 },
  { id: 'wire-252', conductorC: 15, printed: '1.02', ...S12 },
  { id: 'wire-253', conductorC: 25, printed: '0.98', ...S12 },
  { id: 'wire-255', conductorC: 35, printed: '0.943', ...S12 },
  { id: 'wire-256', conductorC: 40, printed: '0.926', ...S12 },
  { id: 'wire-258', conductorC: 60, printed: '0.862', ...S12 },
  { id: 'wire-260', conductorC: 80, printed: '0.806', ...S12 }
] as const
