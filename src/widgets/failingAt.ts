/** Runs what may find a fault in what a lesson wrote, and reports that with the lesson's file and line. */
export function failingAt<Value>(props: Record<string, unknown>, read: () => Value): Value {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    throw new Error(`${String(props['at'])}: ${error.message}`, { cause: error });
  }
}
