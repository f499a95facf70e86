/** A file the bench cannot open, and why, in a sentence for the user. */
export class FileRefusal extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = "FileRefusal";
  }
}
