/** A mistake in a file of the content folder. Its message starts with file and line, and says what to do. */
export class ContentError extends Error {
  override readonly name = 'ContentError';

  /** @param place file and line: 'content/setups.yaml:12' */
  constructor(place: string, message: string) {
    super(`${place}: ${message}`);
  }
}
