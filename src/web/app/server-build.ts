/** The build that the server says it serves, as it is heard with the changes; nothing where it has not said it. */
export function useServerBuild(): string | undefined {
  return undefined;
}
