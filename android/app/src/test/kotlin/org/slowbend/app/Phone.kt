package org.slowbend.app

/** A phone of 65 by 144 mm at 420 dots an inch, held upright. */
const val PHONE = "en-rUS-w411dp-h891dp-420dpi"
