package campcloth.event;

/**
 * An event on file.
 *
 * @param id how it is named in addresses
 * @param version counts its changes; a change must name the version it is made on
 * @param event the event
 */
public record KeptEvent(String id, long version, Event event) {}
