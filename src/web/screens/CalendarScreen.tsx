/** Calendar: from buying to the bowl, forwards or backwards. */

export function CalendarScreen() {
  return (
    <main id="main" className="page">
      <h1>Calendar</h1>
    </main>
  );
}
