export const METRIC_FORM = 'an ISO metric thread as M12 (coarse), M12x1.5 or M12x1.5-6H'
const UNIFIED_FORM = 'a unified thread as 3/8-24, #10-32 UNF or 1/4-20 UNC-2B'
export const THREAD_FORM = `${METRIC_FORM}, or ${UNIFIED_FORM}`
