// The Android plugin compiles Kotlin by itself; this is which Kotlin.
buildscript {
    dependencies { classpath(libs.kotlin.gradle) }
}

plugins {
    alias(libs.plugins.android) apply false
    alias(libs.plugins.kotlin.compose) apply false
}
