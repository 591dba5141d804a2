package campcloth.planted.fibre;

import org.springframework.stereotype.Component;

/** A violation planted on purpose: proves that the rule about frameworks in the core can fail. */
@Component
class FibreWithSpring {}
