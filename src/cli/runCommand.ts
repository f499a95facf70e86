/**
 * Runs a command with what stands behind its name: prints its usage where that is asked for, else what it says. What it
 * throws goes to the error stream, and the command ends with 1.
 */
export async function runCommand(
  usage: string,
  command: (args: readonly string[]) => Promise<string>,
  args: readonly string[] = process.argv.slice(2),
): Promise<void> {
  if (args.includes("--help") || args.includes("-h")) {
    console.log(usage);
    return;
  }
  try {
    console.log(await command(args));
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}
